package hornbook.viewer;

import hornbook.viewer.cli.Cli;
import hornbook.viewer.cli.ExitCode;
import hornbook.viewer.cli.FaultLog;
import hornbook.viewer.cli.Folders;
import hornbook.viewer.cli.Surroundings;

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
        try (ShopWindow window = new ShopWindow(folders)) {
            window.showAndWait(shutAtOnce);
        }
        return ExitCode.DONE;
    }
}
