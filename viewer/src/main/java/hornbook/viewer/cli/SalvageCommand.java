package hornbook.viewer.cli;

import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Pieces saved from a horn. */
@Command(
        name = "salvage",
        header = "Puts pieces saved from a horn into a lot.",
        footer = "hornbook stock salvage lot-0260 2 --from \"parts horn A\"")
final class SalvageCommand extends StockDeed.OnLot {
    @Parameters(index = "1", paramLabel = "N", description = "How many pieces.")
    int pieces;

    @Option(names = "--from", paramLabel = "HORN", required = true, description = "Which horn they come from.")
    String from = "";

    SalvageCommand(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        return workshop.stockBook().salvage(lot, pieces, from);
    }
}
