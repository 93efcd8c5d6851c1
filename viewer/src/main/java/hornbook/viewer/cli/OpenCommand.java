package hornbook.viewer.cli;

import hornbook.shared.shop.BadInput;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Opens the window. */
@Command(name = "open", header = "Opens the window on the shop.", footer = "hornbook open")
final class OpenCommand implements Callable<Integer> {
    @Option(names = "--shut-at-once", hidden = true, description = "Close again after the first frame.")
    boolean shutAtOnce;

    private final Frame frame;
    private final WindowStart window;

    OpenCommand(Frame frame, WindowStart window) {
        this.frame = frame;
        this.window = window;
    }

    @Override
    public Integer call() {
        if (!frame.around().hasDisplay()) {
            throw new BadInput("there is no display to open a window on (DISPLAY and WAYLAND_DISPLAY are not set); "
                    + "every question can be asked as a command, see hornbook --help");
        }
        return window.open(frame.folders(), shutAtOnce);
    }
}
