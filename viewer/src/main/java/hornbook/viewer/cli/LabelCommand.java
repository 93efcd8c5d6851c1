package hornbook.viewer.cli;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Counted;
import hornbook.shared.stock.DrawerCard;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.label.Label;
import hornbook.viewer.paper.label.LabelGrid;
import hornbook.viewer.paper.label.LabelSheets;
import hornbook.viewer.workshop.Workshop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Drawer labels: printed, or written anew. */
@Command(
        name = "label",
        header =
                "Prints labels for drawers, each with a QR code that opens its drawer, as a PDF; or changes what one says.",
        footer = "hornbook label d-card-r5c5 --pdf labels.pdf")
final class LabelCommand implements Callable<Integer> {
    @Parameters(
            paramLabel = "DRAWER",
            arity = "1..*",
            description = "As for the command drawer; quotation marks round a name of several words.")
    List<String> called = List.of();

    @Option(names = "--pdf", paramLabel = "FILE", description = "The file to write.")
    @Nullable
    Path pdf;

    @Option(names = "--write", paramLabel = "WORDS", description = "What the one drawer's label says from now on.")
    @Nullable
    String words;

    @Option(
            names = "--from-cell",
            paramLabel = "N",
            defaultValue = "1",
            description = "First free cell of a sheet partly used, counted along the rows from 1.")
    int fromCell;

    @Option(names = "--ruler", description = "Put a page first to try the printer with: rules of 100 mm.")
    boolean ruler;

    @Option(names = "--paper", paramLabel = "a4|letter", defaultValue = "a4", description = "The sheet; else a4.")
    String paper = "";

    @Option(names = "--cell", paramLabel = "WxH", defaultValue = "70x37", description = "One label in mm; else 70x37.")
    String cell = "";

    private final Frame frame;

    LabelCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        if (words != null) {
            return write(words);
        }
        if (pdf == null) {
            throw new BadInput("say what is to be done: --pdf FILE prints labels, --write WORDS changes what one says");
        }
        LabelSheets sheets = new LabelSheets(LabelGrid.of(PaperSize.named(paper), cell), fromCell, ruler);
        Path file = frame.around().here().resolve(pdf).normalize();
        return frame.reading(workshop -> {
            Optional<String> unknown = called.stream()
                    .filter(name -> workshop.stock().drawer(name).isEmpty())
                    .findFirst();
            return unknown.map(name -> frame.notThere("drawer", name)).orElseGet(() -> print(workshop, sheets, file));
        });
    }

    private int write(String label) {
        if (called.size() != 1 || pdf != null) {
            throw new BadInput(
                    "--write is for one drawer at a time, and is printed after: leave the others and --pdf out");
        }
        return frame.writing(workshop -> LookThroughCommand.answer(
                frame, workshop, workshop.drawerBook().label(called.getFirst(), label, workshop.worker(null))));
    }

    private int print(Workshop workshop, LabelSheets sheets, Path file) {
        List<DrawerCard> cards = called.stream()
                .flatMap(name -> workshop.stock().drawer(name).stream())
                .toList();
        cards.stream()
                .filter(card -> "drifted".equals(card.labelState()))
                .forEach(card -> frame.say(card.id() + ": " + card.heed()));
        LabelSheets.Printed printed = sheets.print(cards.stream().map(Label::of).toList(), file);
        return frame.answer(printed, out -> print(out, printed));
    }

    private static void print(PrintWriter out, LabelSheets.Printed printed) {
        printed.labels()
                .forEach(label -> out.println(label.drawer() + "  page " + label.page() + ", cell " + label.cell()));
        out.println(printed.file() + "  " + Counted.of(printed.pages(), "page")
                + "; print at 100 %, not fitted to the page");
    }
}
