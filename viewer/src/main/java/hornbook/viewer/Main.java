package hornbook.viewer;

import hornbook.viewer.cli.Cli;
import hornbook.viewer.cli.ExitCode;
import hornbook.viewer.cli.FaultLog;
import hornbook.viewer.cli.Folders;
import hornbook.viewer.cli.Surroundings;
import hornbook.viewer.window.HornbookWindow;
import hornbook.viewer.window.Shell;
import hornbook.viewer.window.Toolkit;
import java.util.List;

/** The program. Does not extend JavaFX's Application, so that a command loads none of it. */
public final class Main {
    private Main() {}

    public static void main(String[] line) {
        Surroundings around = Surroundings.ofThisProcess();
        FaultLog log = FaultLog.to(Folders.of(around).log());
        int code = new Cli(around, Main::openWindow).run(line);
        log.close();
        System.exit(code);
    }

    private static int openWindow(Folders folders, boolean shutAtOnce) {
        Toolkit.showAndWait(
                () -> new HornbookWindow(new Shell("Hornbook", List.of()), "Hornbook", folders.settings()), shutAtOnce);
        return ExitCode.DONE;
    }
}
