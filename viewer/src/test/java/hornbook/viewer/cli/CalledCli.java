package hornbook.viewer.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Map;

/** Runs command lines inside the test and keeps what they print. */
final class CalledCli {
    final StringWriter out = new StringWriter();
    final StringWriter err = new StringWriter();
    private final Surroundings around;
    private WindowStart window = (folders, shut) -> ExitCode.DONE;

    CalledCli(Map<String, String> variables, String system, Path home) {
        around = new Surroundings(variables, system, home, home, new PrintWriter(out), new PrintWriter(err));
    }

    CalledCli(Path home) {
        this(Map.of(), "Linux", home);
    }

    CalledCli with(WindowStart other) {
        window = other;
        return this;
    }

    int run(String... line) {
        return cli().run(line);
    }

    Cli cli() {
        return new Cli(around, window);
    }
}
