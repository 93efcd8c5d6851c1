package hornbook.viewer.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Does once what is done most, in a shop that is there, so that the start-up cache holds the classes for it. */
@Command(
        name = "train",
        hidden = true,
        header = "Runs once through the usual work, for the start-up cache.",
        footer = "hornbook train")
final class TrainCommand implements Callable<Integer> {
    @Option(names = "--window", description = "The window as well; else commands alone.")
    boolean shown;

    @Option(names = "--alone", description = "The window and no commands: as long as it takes to open.")
    boolean alone;

    private final Frame frame;
    private final WindowStart window;

    TrainCommand(Frame frame, WindowStart window) {
        this.frame = frame;
        this.window = window;
    }

    @Override
    public Integer call() {
        if (!alone) {
            commands(frame.shop().toString());
        }
        return shown || alone ? window.open(frame.folders(), true) : ExitCode.DONE;
    }

    private void commands(String shop) {
        // The real commands, as a person gives them: what they load is what the cache is for.
        Cli cli = new Cli(frame.around(), window);
        cli.run("find", "--shop", shop, "corvane", "disc", "19");
        cli.run("find", "--shop", shop, "2.38", "mm", "rod", "3-48", "or", "siezed", "piv");
        cli.run("find", "--json", "--shop", shop, "how did the last halyard go");
        cli.run("drawer", "--shop", shop, "d-card-r5c5");
    }
}
