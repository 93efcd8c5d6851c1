package hornbook.viewer.drawers;

import hornbook.shared.stock.Stock;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.ask.Field;
import hornbook.viewer.ask.Field.Choice;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.label.Label;
import hornbook.viewer.paper.label.LabelGrid;
import hornbook.viewer.paper.label.LabelSheets;
import java.nio.file.Path;
import java.util.List;

/** Prints labels of drawers to a file, and remembers how far the sheet is used up. */
public final class LabelPrint {
    private final Stock stock;

    private String file;
    private String paper = "a4";
    private String cell = "70x37";
    private int next = 1;

    /** @param folder where the file lies unless told otherwise */
    public LabelPrint(Stock stock, Path folder) {
        this.stock = stock;
        this.file = folder.resolve("labels.pdf").toString();
    }

    /** What must be known before so many are printed. */
    Ask ask(int labels) {
        return new Ask(
                labels == 1 ? "Print one label" : "Print " + labels + " labels",
                "Print to the file",
                Field.number("cell", "First free cell of the sheet, along the rows", Integer.toString(next)),
                Field.choice("paper", "Paper", List.of(new Choice("a4", "A4"), new Choice("letter", "Letter")))
                        .holding(paper),
                Field.number("size", "One label, mm", cell),
                Field.choice(
                        "ruler",
                        "Page to try the printer",
                        List.of(new Choice("no", "no"), new Choice("yes", "yes, with rules of 100 mm"))),
                Field.text("file", "File (PDF)", file));
    }

    /** Prints them, and says where they are. @throws hornbook.shared.shop.BadInput where that cannot be done */
    String print(List<String> drawers, Answers answers) {
        LabelGrid grid = LabelGrid.of(PaperSize.named(answers.text("paper")), answers.text("size"));
        LabelSheets sheets = new LabelSheets(
                grid, answers.whole("cell", "first cell"), answers.text("ruler").equals("yes"));
        LabelSheets.Printed printed = sheets.print(
                drawers.stream()
                        .flatMap(drawer -> stock.drawer(drawer).stream())
                        .map(Label::of)
                        .toList(),
                Path.of(answers.needed("file", "the file")));
        paper = answers.text("paper");
        cell = answers.text("size");
        file = printed.file();
        next = printed.labels().isEmpty() ? next : printed.labels().getLast().cell() % grid.cells() + 1;
        return printed.labels().size() + (printed.labels().size() == 1 ? " label" : " labels") + " in " + printed.file()
                + ". Print it at 100 %, not fitted to the page.";
    }
}
