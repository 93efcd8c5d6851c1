package hornbook.viewer.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Does once what is done most, so that the start-up cache holds the classes for it. The launcher calls it. */
@Command(
        name = "train",
        hidden = true,
        header = "Runs once through the usual work, for the start-up cache.",
        footer = "hornbook train")
final class TrainCommand implements Callable<Integer> {
    private final Frame frame;
    private final WindowStart window;

    TrainCommand(Frame frame, WindowStart window) {
        this.frame = frame;
        this.window = window;
    }

    @Override
    public Integer call() {
        frame.answer(frame.folders(), out -> {});
        return window.open(frame.folders(), true);
    }
}
