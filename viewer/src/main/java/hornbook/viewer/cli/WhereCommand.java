package hornbook.viewer.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Says which folders are in use. */
@Command(name = "where", header = "Says which folders are in use.", footer = "hornbook where")
final class WhereCommand implements Callable<Integer> {
    private final Frame frame;

    WhereCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        Folders folders = frame.folders();
        return frame.answer(folders, out -> {
            line(out, "shop", folders.shop());
            line(out, "demo", folders.demo());
            line(out, "settings", folders.settings());
            line(out, "log", folders.log());
        });
    }

    private static void line(PrintWriter out, String name, Path path) {
        out.printf("%-9s %s%s%n", name, path, Files.exists(path) ? "" : "  (not there yet)");
    }
}
