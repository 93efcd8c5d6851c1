package hornbook.viewer.paper.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import hornbook.shared.shop.BadInput;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.Rendered;
import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Printed pages are rendered at 203 dpi, a usual label printer's pitch of 8 dots a mm, and looked at. */
class LabelSheetsTest {
    private static final double LABEL_PRINTER = 203;
    private static final double PIXEL = 25.4 / LABEL_PRINTER;

    @TempDir
    Path folder;

    /** Read back by the ZXing reader, which follows ISO/IEC 18004, not by our own. */
    @ParameterizedTest(name = "{0} in {1}, turned {2}, blurred over {3}")
    @CsvSource({
        "d-card-r5c5,                      70x37,  0, 1",
        "d-card-r5c5,                      70x37, 15, 3",
        "d-card-r5c5,                      40x20, 15, 3",
        "pl-bench-left,                    70x37, 15, 5",
        "d-long-cabinet-name-row-r12c14,   70x37, 15, 3",
        "d-long-cabinet-name-row-r12c14,   40x20, 15, 2",
    })
    void theCodeIsReadAgainFromThePrintedPage(String id, String cell, double turn, int blur) {
        Path pdf = printed(LabelGrid.of(PaperSize.A4, cell), 1, false, new Label(id, "PIVOTS", "screws", "row 5"));
        assertThat(Rendered.page(pdf, 1, LABEL_PRINTER).photographed(turn, blur).codes())
                .containsOnlyKeys("hornbook:" + id);
    }

    /** Where a cell of a bought sheet is: counted with a steel rule, 3 by 8 labels of 70 x 37 on 297 mm. */
    @ParameterizedTest(name = "cell {0}: page {1}, from {2} mm, {3} mm")
    @CsvSource({"1, 1, 0, 0.5", "3, 1, 140, 0.5", "4, 1, 0, 37.5", "17, 1, 70, 185.5", "24, 1, 140, 259.5"})
    void aHalfUsedSheetIsTakenUpAtItsCell(int cell, int page, double left, double top) {
        Path pdf = printed(a4(), cell, false, label("d-card-r5c5"));
        Rendered rendered = Rendered.page(pdf, page, LABEL_PRINTER);
        double[] middle = rendered.codes().get("hornbook:d-card-r5c5");
        assertThat(middle[0]).isCloseTo(left + 70 - 5 - 21 / 2.0, within(0.3));
        assertThat(middle[1]).isCloseTo(top + 37 / 2.0, within(0.3));
        IntStream.rangeClosed(1, 24)
                .filter(other -> other != cell)
                .forEach(other -> assertThat(rendered.inked(inside(a4().cell(other))))
                        .as("cell " + other)
                        .isFalse());
    }

    @Test
    void labelsRunOnToTheNextSheet() {
        LabelSheets.Printed printed = new LabelSheets(a4(), 23, true)
                .print(List.of(label("d-a"), label("d-b"), label("d-c")), folder.resolve("three.pdf"));
        assertThat(printed.pages()).isEqualTo(3);
        assertThat(printed.labels())
                .extracting(LabelSheets.Placed::drawer, LabelSheets.Placed::page, LabelSheets.Placed::cell)
                .containsExactly(tuple("d-a", 2, 23), tuple("d-b", 2, 24), tuple("d-c", 3, 1));
        assertThat(codes("three.pdf", 2)).containsOnlyKeys("hornbook:d-a", "hornbook:d-b");
        assertThat(codes("three.pdf", 3)).containsOnlyKeys("hornbook:d-c");
    }

    /** 100 mm are 100 mm: ISO 216 paper of 210 x 297, ANSI A of 8.5 x 11 inch, the rule between its end ticks. */
    @ParameterizedTest
    @CsvSource({"A4, 210, 297", "LETTER, 215.9, 279.4"})
    void theRuleIsTrue(PaperSize paper, double width, double height) {
        Path pdf = printed(new LabelGrid(paper, 70, 37), 1, true, label("d-a"));
        Rendered page = Rendered.page(pdf, 1, LABEL_PRINTER);
        assertThat(page.mm(page.image().getWidth())).isCloseTo(width, within(PIXEL));
        assertThat(page.mm(page.image().getHeight())).isCloseTo(height, within(PIXEL));
        List<Integer> ticks = starts(page, page.pixels(Ruler.TOP - 1));
        assertThat(ticks).hasSize(101);
        assertThat(page.mm(ticks.getLast() - ticks.getFirst())).isCloseTo(100, within(PIXEL));
        assertThat(page.mm(ticks.get(50) - ticks.getFirst())).isCloseTo(50, within(PIXEL));
        assertThat(starts(page, page.pixels(Ruler.TOP - 5))).hasSize(11);
    }

    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "70x37  | 25 | cell 25: it has 24",
                "70x37  | 0  | no cell 0",
                "30x15  | 1  | 40x20",
                "211x50 | 1  | cannot be printed",
                "big    | 1  | as in 70x37"
            })
    void whatCannotBePrintedIsSaid(String cell, int from, String said) {
        assertThatThrownBy(() -> new LabelSheets(LabelGrid.of(PaperSize.A4, cell), from, false))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining(said)
                .hasMessageNotContaining("\n");
    }

    /** Text of every kind: long, unbroken, of signs the type lacks. */
    @ParameterizedTest
    @CsvSource({
        "Octave key pips and other small parts of the upper stack that came from three horns, Octave",
        "Donaudampfschifffahrtsgesellschaftskapitänsmützenständer, Donau",
        "low B♭ guard 🎷 \u0007 日本, low",
        "ø 5.5 × 2 µm, ø"
    })
    void anyTextIsPrintedAndStaysInItsCell(String heading, String shown) {
        Path pdf = printed(a4(), 5, false, new Label("d-a", heading, heading.repeat(20), "row 1"));
        assertThat(Rendered.text(pdf)).contains(shown).contains("…");
        Rendered page = Rendered.page(pdf, 1, LABEL_PRINTER);
        assertThat(List.of(2, 4, 6, 8)).noneMatch(cell -> page.inked(inside(a4().cell(cell))));
        assertThat(page.codes()).containsOnlyKeys("hornbook:d-a");
    }

    private Map<String, double[]> codes(String file, int page) {
        return Rendered.page(folder.resolve(file), page, LABEL_PRINTER).codes();
    }

    /** Where dark pieces begin along a row of pixels. */
    private static List<Integer> starts(Rendered page, int row) {
        return IntStream.range(1, page.image().getWidth())
                .filter(x -> page.dark(x, row) && !page.dark(x - 1, row))
                .boxed()
                .toList();
    }

    private static Rectangle2D inside(Rectangle2D cell) {
        return new Rectangle2D.Double(cell.getX() + 2, cell.getY() + 2, cell.getWidth() - 4, cell.getHeight() - 4);
    }

    private Path printed(LabelGrid grid, int from, boolean ruler, Label label) {
        Path pdf = folder.resolve("labels.pdf");
        new LabelSheets(grid, from, ruler).print(List.of(label), pdf);
        return pdf;
    }

    private static LabelGrid a4() {
        return LabelGrid.of(PaperSize.A4, "70x37");
    }

    private static Label label(String id) {
        return new Label(id, "PIVOTS CORV", "pivot screw; octave pip", "Card index, row 5, column 5");
    }
}
