package hornbook.viewer.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** The command without a name: opens the window. */
@Command(
        name = "hornbook",
        header = "The memory of a saxophone repairer's shop. Without a command it opens the window.",
        footer = "hornbook where",
        synopsisSubcommandLabel = "COMMAND",
        commandListHeading = "%nCommands:%n",
        optionListHeading = "%nOptions:%n")
final class Root implements Callable<Integer> {
    private final OpenCommand open;

    Root(OpenCommand open) {
        this.open = open;
    }

    @Override
    public Integer call() {
        return open.call();
    }
}
