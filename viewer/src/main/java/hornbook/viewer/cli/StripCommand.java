package hornbook.viewer.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Everything off a parts horn. */
@Command(
        name = "strip",
        header = "Takes everything still on a parts horn off it, or empties another place, in one step.",
        footer = "hornbook stock strip \"parts horn D\" \"shelf 1\"")
final class StripCommand implements Callable<Integer> {
    @Parameters(
            index = "0",
            paramLabel = "FROM",
            description = "The parts horn, drawer or place; “hornbook drawer FROM” says what is still on it.")
    String from = "";

    @Parameters(index = "1", paramLabel = "PLACE", description = "Where it all goes.")
    String to = "";

    private final Frame frame;

    StripCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        return frame.writing(workshop -> StockCommand.answer(frame, workshop, stock -> stock.strip(from, to)));
    }
}
