package hornbook.viewer.cli;

import hornbook.viewer.demo.DemoShop;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Does once what is done most, in a demo shop, so that the start-up cache holds the classes for it. */
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
        DemoShop.in(frame.shop()).close();
        String shop = frame.shop().toString();
        // The real commands, as a person gives them: what they load is what the cache is for.
        Cli cli = new Cli(frame.around(), window);
        cli.run("find", "--shop", shop, "corvane", "disc", "19", "mm");
        cli.run("find", "--json", "--shop", shop, "how did the last halyard go");
        cli.run("drawer", "--shop", shop, "d-card-r5c5");
        return window.open(frame.folders(), true);
    }
}
