package hornbook.viewer.cli;

import hornbook.shared.exchange.ImportReport;
import hornbook.shared.exchange.Refusal;
import hornbook.shared.shop.BadInput;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes files into the shop. */
@Command(
        name = "import",
        header = "Takes a folder of exchange files into the shop; bad rows are named, the rest is taken.",
        footer = "hornbook import shop-files --dry-run")
final class ImportCommand implements Callable<Integer> {
    @Parameters(paramLabel = "DIR", description = "A folder as export writes it.")
    Path from = Path.of("");

    @Option(names = "--dry-run", description = "Say what would be taken and change nothing.")
    boolean dryRun;

    private final Frame frame;

    ImportCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        Path folder = frame.around().here().resolve(from).normalize();
        if (!Files.isDirectory(folder)) {
            throw new BadInput(folder + " is no folder: name one that export wrote");
        }
        return frame.writing(workshop -> {
            ImportReport report = workshop.importing().from(folder, dryRun);
            int code = frame.answer(report, out -> print(out, report));
            return report.taken() == 0
                    ? ExitCode.BAD_INPUT
                    : report.refused().isEmpty() ? code : ExitCode.NOTHING_FOUND;
        });
    }

    private static void print(PrintWriter out, ImportReport report) {
        report.remarks().forEach(remark -> out.println("remark: " + remark));
        report.refused().forEach(refusal -> out.println("refused: " + words(refusal)));
        out.println(report.read() + " rows read, " + report.taken() + " taken, "
                + report.refused().size() + " refused");
    }

    private static String words(Refusal refusal) {
        String row = refusal.row() == 0 ? "" : ", row " + refusal.row();
        String field = refusal.field() == null ? "" : ", " + refusal.field();
        return refusal.file() + row + field + ": " + refusal.why();
    }
}
