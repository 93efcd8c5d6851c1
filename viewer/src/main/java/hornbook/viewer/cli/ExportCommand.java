package hornbook.viewer.cli;

import hornbook.shared.exchange.Export;
import hornbook.shared.shop.Counted;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the shop out as plain files. */
@Command(
        name = "export",
        header = "Writes the whole shop as CSV and JSON files that any spreadsheet opens.",
        footer = "hornbook export --to shop-files")
final class ExportCommand implements Callable<Integer> {
    @Option(names = "--to", paramLabel = "DIR", required = true, description = "The folder to write into.")
    Path to = Path.of("");

    @Option(
            names = "--with-customers",
            description =
                    "Owners' names and contacts too, which otherwise stay in the shop: for moving to another machine.")
    boolean withCustomers;

    private final Frame frame;

    ExportCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        return frame.reading(workshop -> {
            Export.Answer answer =
                    workshop.exporting().to(frame.around().here().resolve(to).normalize(), withCustomers);
            return frame.answer(
                    answer, out -> out.println(Counted.of(answer.files().size(), "file") + " in " + answer.folder()));
        });
    }
}
