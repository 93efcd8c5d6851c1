package hornbook.viewer.cli;

import hornbook.catalogue.called.Called;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.LotState;
import hornbook.shared.stock.Piece;
import hornbook.viewer.workshop.Workshop;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What a piece in hand is, as written on a line. */
final class PieceOptions {
    @Option(names = "--kind", paramLabel = "KIND", description = "Kind of part or supply; else what its name says.")
    @Nullable
    String kind;

    @Option(names = "--thread", paramLabel = "THREAD", description = "Its thread, as 3-48 or M3x0.5.")
    String thread = "";

    @Option(
            names = "--size",
            paramLabel = "SIZES",
            description = "Its sizes, as 12 mm, or length 12; head 3.9, or nose=tapered.")
    String size = "";

    @Option(
            names = "--state",
            paramLabel = "new|salvaged|blank",
            description = "How it came; blank is stock to be worked.")
    @Nullable
    String state;

    Piece piece(String title, LotState usual, Workshop workshop) {
        return Piece.said(
                title,
                kind(title, workshop),
                size,
                thread,
                state(usual),
                workshop.sizes().reader());
    }

    /** A lot of no kind is found by its words only: neither pads nor fits are worked out from it. */
    Optional<String> remark(String title, Workshop workshop) {
        return kind(title, workshop).isEmpty()
                ? Optional.of("! its name does not say what kind it is, so fit, pads and restock pass it by:"
                        + " name it with “hornbook stock change LOT --kind KIND” (“hornbook find " + title
                        + " --kind part --kind supply” shows the kinds)")
                : Optional.empty();
    }

    private String kind(String title, Workshop workshop) {
        return kind == null ? workshop.names().thing(title).orElse("") : kindNamed(kind, workshop);
    }

    /** @throws BadInput where no kind of part or supply is called that */
    static String kindNamed(String kind, Workshop workshop) {
        return Called.stock(workshop.catalogue()).find(kind).id();
    }

    private LotState state(LotState usual) {
        return state == null ? usual : OneOf.of(LotState.values()).read(state, "is no state");
    }
}
