package hornbook.viewer.cli;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.LotState;
import hornbook.shared.stock.BagBook;
import hornbook.shared.stock.LotCard;
import hornbook.shared.stock.Piece;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import java.io.PrintWriter;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Pieces out of a grab bag. */
@Command(
        name = "sort-out",
        header = "Takes pieces that were found out to be something out of a grab bag.",
        footer =
                "hornbook stock sort-out lot-0499 2 \"pivot screw\" --thread 3-48 --size \"length 10.4\" --into lot-0001")
final class SortOutCommand extends StockDeed {
    @Parameters(index = "0", paramLabel = "BAG", description = "The bag's number, or another lot's.")
    String bag = "";

    @Parameters(index = "1", paramLabel = "N", description = "How many pieces.")
    int pieces;

    @Parameters(index = "2", paramLabel = "WHAT", description = "What they are.")
    String title = "";

    @Option(names = "--into", paramLabel = "LOT", description = "They go to that lot of such pieces.")
    @Nullable
    String into;

    @Option(names = "--to", paramLabel = "PLACE", description = "They become a lot of their own there.")
    @Nullable
    String to;

    @Mixin
    PieceOptions options = new PieceOptions();

    SortOutCommand(Frame frame) {
        super(frame);
    }

    @Override
    public Integer call() {
        if (into != null && to != null) {
            throw new BadInput("--into and --to contradict one another: give one of them");
        }
        return into == null && to == null ? frame.reading(this::whereSuchLie) : super.call();
    }

    private Piece piece(Workshop workshop) {
        return options.piece(title, LotState.SALVAGED, workshop);
    }

    @Override
    Deed done(Workshop workshop) {
        BagBook bags = workshop.bagBook();
        if (into != null) {
            return bags.sortOutInto(bag, pieces, into);
        }
        return bags.sortOut(bag, pieces, piece(workshop), to == null ? "" : to);
    }

    /** Where such pieces lie; nothing is done yet. */
    record SuchLie(List<LotCard> near) {}

    private int whereSuchLie(Workshop workshop) {
        SuchLie answer = new SuchLie(workshop.alike().to(piece(workshop)));
        frame.say("nothing is done yet: say where they go with --into LOT or --to PLACE");
        return answer.near().isEmpty()
                ? frame.nothing(answer, out -> out.println("nothing like it is known in this shop"))
                : frame.answer(answer, out -> answer.near().forEach(lot -> print(out, lot)));
    }

    private static void print(PrintWriter out, LotCard lot) {
        String thread = lot.thread() == null ? "" : "  " + lot.thread();
        out.println(lot.id() + "  " + lot.count() + "  " + lot.title() + "  "
                + lot.dimensions().replace(";", "  ") + thread + "  in " + lot.drawer() + " “" + lot.drawerLabel()
                + "”");
    }
}
