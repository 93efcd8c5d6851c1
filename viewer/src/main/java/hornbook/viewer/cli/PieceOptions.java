package hornbook.viewer.cli;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.LotState;
import hornbook.shared.stock.Piece;
import hornbook.viewer.workshop.Workshop;
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

    private String kind(String title, Workshop workshop) {
        if (kind == null) {
            return workshop.names().thing(title).orElse("");
        }
        return workshop.names()
                .thing(kind)
                .orElseThrow(() -> new BadInput("--kind “" + kind
                        + "” is no kind of part or supply known here: look it up with “hornbook find " + kind
                        + " --kind part”"));
    }

    private LotState state(LotState usual) {
        return state == null ? usual : OneOf.of(LotState.values()).read(state, "is no state");
    }
}
