package hornbook.viewer.cli;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine;

/** The command line as a whole: every command in its place, and what becomes of errors. */
public final class Cli {
    private final Surroundings around;
    private final WindowStart window;
    private final Faults faults;

    public Cli(Surroundings around, WindowStart window) {
        this.around = around;
        this.window = window;
        faults = new Faults(around, Folders.of(around).log());
    }

    /** Runs one line and gives the exit code, see {@link ExitCode}. Throws nothing. */
    public int run(String... words) {
        try {
            return line(words).execute(words);
        } catch (RuntimeException | Error unforeseen) {
            return faults.thrown(unforeseen);
        } finally {
            around.out().flush();
        }
    }

    private static Path file(String text) {
        if (text.isBlank()) {
            throw new CommandLine.TypeConversionException("no file or folder is named: write its name");
        }
        return Path.of(text);
    }

    /** The command that these words name; all commands with their help pages where they name none. */
    CommandLine line(String... words) {
        Frame frame = new Frame(around);
        CommandLine line = new CommandLine(new Root(new OpenCommand(frame, window)));
        line.addMixin("common", frame.options());
        new Commands(frame, window).into(line, List.of(words));
        line.registerConverter(Path.class, Cli::file);
        line.registerConverter(BigDecimal.class, Numbers::decimal);
        line.registerConverter(Integer.class, Numbers::whole);
        line.registerConverter(Long.class, Numbers::number);
        line.registerConverter(int.class, Numbers::whole);
        HelpPage.openWithExamples(line);
        line.setOut(around.out());
        line.setErr(around.err());
        line.setParameterExceptionHandler(faults::usage);
        line.setExecutionExceptionHandler((thrown, command, parsed) -> faults.thrown(thrown));
        return line;
    }
}
