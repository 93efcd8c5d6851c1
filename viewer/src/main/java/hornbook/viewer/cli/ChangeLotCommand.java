package hornbook.viewer.cli;

import hornbook.shared.shop.Lot;
import hornbook.shared.stock.LotSaid;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What a lot is, said anew. */
@Command(
        name = "change",
        header = "Puts right what is written down of a lot: its name, kind, sizes, thread, where it is bought.",
        footer = "hornbook stock change lot-0748 --pack 24 --supplier marlbeck")
final class ChangeLotCommand extends StockDeed.OnLot {
    @Option(names = "--title", paramLabel = "WORDS", description = "What it is called.")
    @Nullable
    String title;

    @Option(
            names = "--kind",
            paramLabel = "KIND",
            description = "Kind of part or supply, in words or by id. Else what a new name says, where it had none.")
    @Nullable
    String kind;

    @Option(names = "--size", paramLabel = "SIZES", description = "All its sizes, as length 12; head 3.9.")
    @Nullable
    String size;

    @Option(names = "--thread", paramLabel = "THREAD", description = "Its thread, as 3-48; \"\" for none.")
    @Nullable
    String thread;

    @Option(names = "--material", paramLabel = "WORDS", description = "What it is made of.")
    @Nullable
    String material;

    @Option(names = "--colour", paramLabel = "WORDS", description = "Its colour.")
    @Nullable
    String colour;

    @Option(names = "--supplier", paramLabel = "SUPPLIER", description = "Where it is bought; \"\" for nowhere.")
    @Nullable
    String supplier;

    @Option(names = "--pack", paramLabel = "N", description = "How many are sold together; 0: singly.")
    @Nullable
    Integer pack;

    @Option(names = "--note", paramLabel = "WORDS", description = "A note, in place of the old one.")
    @Nullable
    String note;

    ChangeLotCommand(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        LotSaid said = new LotSaid(title, kind(workshop), size, thread, material, colour, supplier, pack, note);
        return workshop.stockBook().describe(lot, said, workshop.sizes().reader());
    }

    /** As told; a lot that had no kind takes the one that its new name says. */
    private @Nullable String kind(Workshop workshop) {
        if (kind != null) {
            return PieceOptions.kindNamed(kind, workshop);
        }
        Optional<Lot> bare = workshop.books()
                .find(Lot.class, lot)
                .filter(there -> there.item().isEmpty());
        return title == null || bare.isEmpty()
                ? null
                : workshop.names().thing(title).orElse(null);
    }
}
