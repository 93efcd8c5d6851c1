package hornbook.viewer.cli;

import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Everything off a parts horn. */
@Command(
        name = "strip",
        header = "Takes everything still on a parts horn off it, or empties another place, in one step.",
        footer = "hornbook stock strip \"parts horn D\" \"shelf 1\"")
final class StripCommand extends StockDeed {
    @Parameters(
            index = "0",
            paramLabel = "FROM",
            description = "The parts horn, drawer or place; “hornbook drawer FROM” says what is still on it.")
    String from = "";

    @Parameters(index = "1", paramLabel = "PLACE", description = "Where it all goes.")
    String to = "";

    StripCommand(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        return workshop.stockBook().strip(from, to);
    }
}
