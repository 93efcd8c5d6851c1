package hornbook.viewer.cli;

import hornbook.shared.shop.BadInput;
import hornbook.shared.stock.Receipt;
import hornbook.shared.store.Deed;
import hornbook.shared.supply.Judged;
import hornbook.shared.supply.Verdict;
import hornbook.viewer.workshop.Workshop;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Goods in. */
@Command(
        name = "receive",
        header = "Puts goods that came in into a lot.",
        footer = "hornbook stock receive lot-0748 12 --order o-0301")
final class ReceiveCommand extends StockDeed.OnLot {
    @Parameters(index = "1", paramLabel = "N", description = "How many pieces.")
    int pieces;

    @Option(names = "--from", paramLabel = "SUPPLIER", description = "Who sent them.")
    @Nullable
    String supplier;

    @Option(
            names = "--order",
            paramLabel = "ORDER",
            description = "The open order they answer; the rest of it stays open.")
    @Nullable
    String order;

    @Option(names = "--price", paramLabel = "PRICE", description = "Of one piece.")
    @Nullable
    BigDecimal price;

    @Option(
            names = "--note",
            paramLabel = "WORDS",
            description = "A substitute, a wrong count, what is odd about them.")
    String note = "";

    @Option(names = "--keep", paramLabel = "WHY", description = "Buy these again, and why.")
    @Nullable
    String keep;

    @Option(names = "--avoid", paramLabel = "WHY", description = "Never buy these again, and why: they stop counting.")
    @Nullable
    String avoid;

    ReceiveCommand(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        return workshop.stockBook().receive(lot, new Receipt(pieces, supplier, order, null, price, note), judged());
    }

    private @Nullable Judged judged() {
        if (keep != null && avoid != null) {
            throw new BadInput("--keep and --avoid contradict one another: give one of them");
        }
        if (avoid != null) {
            return new Judged(Verdict.AVOID, avoid);
        }
        return keep == null ? null : new Judged(Verdict.KEEP, keep);
    }
}
