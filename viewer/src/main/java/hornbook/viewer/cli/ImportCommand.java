package hornbook.viewer.cli;

import hornbook.shared.exchange.ImportReport;
import hornbook.shared.exchange.Refusal;
import hornbook.shared.exchange.SheetKind;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Counted;
import hornbook.viewer.workshop.Workshop;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes files into the shop. */
@Command(
        name = "import",
        header = "Takes an export, or your own spreadsheet saved as CSV, into the shop; bad rows are named.",
        footer = "hornbook import shop-files --dry-run")
final class ImportCommand implements Callable<Integer> {
    @Parameters(paramLabel = "DIR|FILE", description = "A folder as export writes it, or a CSV file of your own.")
    Path from = Path.of("");

    @Option(
            names = "--as",
            paramLabel = "KIND",
            description = "What the rows of your file are: drawers, lots, horns, jobs, hours, suppliers.")
    @Nullable
    String as;

    @Option(
            names = "--map",
            paramLabel = "COLUMN=FIELD",
            arity = "1..*",
            description = "Columns that are headed otherwise than their field.")
    List<String> map = List.of();

    @Option(names = "--dry-run", description = "Say what would be taken and change nothing.")
    boolean dryRun;

    @Option(
            names = "--rows-to-fix",
            paramLabel = "FILE",
            description =
                    "Write the refused rows there, each with why (for a folder: a folder); corrected, they come in.")
    @Nullable
    Path fix;

    private final Frame frame;

    ImportCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        Path named = frame.around().here().resolve(from).normalize();
        if (!Files.exists(named)) {
            throw new BadInput(named + " is not there: name a folder that export wrote, or a CSV file");
        }
        if (as == null && !Files.isDirectory(named)) {
            throw new BadInput(named
                    + " is a file: say what its rows are with --as lots (or drawers, horns, jobs, hours, suppliers)");
        }
        return frame.writing(workshop -> {
            ImportReport report = as == null ? workshop.importing().from(named, dryRun) : sheet(workshop, named, as);
            frame.answer(report, out -> print(out, report));
            writeRowsToFix(workshop, named, report);
            return report.taken() == 0
                    ? ExitCode.BAD_INPUT
                    : report.refused().isEmpty() ? ExitCode.DONE : ExitCode.NOTHING_FOUND;
        });
    }

    private void writeRowsToFix(Workshop workshop, Path from, ImportReport report) {
        if (fix == null || report.refused().stream().noneMatch(refusal -> refusal.row() > 0)) {
            return;
        }
        Path to = frame.around().here().resolve(fix).normalize();
        if (as == null) {
            workshop.importing().rowsToFix(from, report, to);
        } else {
            workshop.importingSheets().rowsToFix(from, report, to);
        }
        frame.say("the refused rows stand in " + to + ", each with why: correct them there and import that");
    }

    private ImportReport sheet(Workshop workshop, Path file, String as) {
        SheetKind kind = Arrays.stream(SheetKind.values())
                .filter(k -> k.name().equalsIgnoreCase(as))
                .findFirst()
                .orElseThrow(() -> new BadInput("--as " + as + " is not known: write one of "
                        + Arrays.stream(SheetKind.values())
                                .map(k -> k.name().toLowerCase(Locale.ROOT))
                                .collect(Collectors.joining(", "))));
        return workshop.importingSheets().from(file, kind, columns(), dryRun);
    }

    private Map<String, String> columns() {
        Map<String, String> columns = new HashMap<>();
        for (String pair : map) {
            int equals = pair.lastIndexOf('=');
            if (equals < 1) {
                throw new BadInput("--map " + pair + " is not written as COLUMN=FIELD");
            }
            columns.put(pair.substring(0, equals), pair.substring(equals + 1));
        }
        return columns;
    }

    private static void print(PrintWriter out, ImportReport report) {
        report.remarks().forEach(remark -> out.println("remark: " + remark));
        report.refused().forEach(refusal -> out.println("refused: " + words(refusal)));
        out.println(Counted.of(report.read(), "row") + " read, " + report.taken() + " taken, "
                + report.refused().size() + " refused");
    }

    private static String words(Refusal refusal) {
        String row = refusal.row() == 0 ? "" : ", " + refusal.at();
        String field = refusal.field() == null ? "" : ", " + refusal.field();
        return refusal.file() + row + field + ": " + refusal.why();
    }
}
