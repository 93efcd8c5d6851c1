package hornbook.viewer.paper.year;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.estimate.HonestyAnswer;
import hornbook.catalogue.estimate.HonestyAnswer.Stretch;
import hornbook.shared.year.YearAnswer;
import hornbook.shared.year.YearAnswer.KindLine;
import hornbook.shared.year.YearAnswer.LateLine;
import hornbook.shared.year.YearAnswer.MonthLine;
import hornbook.shared.year.YearAnswer.OverrunLine;
import hornbook.shared.year.YearAnswer.SupplierLine;
import hornbook.shared.year.YearAnswer.TaskLine;
import hornbook.shared.year.YearAnswer.UsedLine;
import hornbook.viewer.paper.Columns;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.Rendered;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class YearPaperTest {
    private static final LocalDate DAY = LocalDate.of(2025, 3, 1);

    @TempDir
    Path folder;

    private static HonestyAnswer honesty(int stretches) {
        List<Stretch> over = Collections.nCopies(stretches, new Stretch(DAY, DAY, 20, 0.5, 0.8));
        return new HonestyAnswer(20 * stretches, 0.5, 0.8, 0.2, 0.3, over, List.of(), List.of("as honest as can be"));
    }

    private static YearAnswer year(int lines) {
        List<MonthLine> months = new ArrayList<>();
        for (int m = 1; m <= 12; m++) {
            months.add(new MonthLine(m, m, 12 - m, 600 * m, m, BigDecimal.TEN));
        }
        return new YearAnswer(
                2025,
                LocalDate.of(2025, 12, 31),
                78,
                66,
                1,
                46_800,
                months,
                List.of(new KindLine("overhaul", 12, 40_000), new KindLine("quick", 9, 6_800)),
                Collections.nCopies(lines, new TaskLine("task-pad-fit", 12, 9_000)),
                Collections.nCopies(lines, new UsedLine("sup-pad-single", 200, new BigDecimal("310.40"), 0)),
                new BigDecimal("900.00"),
                new BigDecimal("120.00"),
                Collections.nCopies(lines, new LateLine("j-0007", "quick", DAY, null, 12)),
                60,
                Collections.nCopies(lines, new OverrunLine("j-0008", "quick", 30, 60, 100)),
                58,
                List.of(new SupplierLine("sup-v-a", "Somebody far away", 3, 14, 40, 1, BigDecimal.ONE)),
                List.of("nothing is left out"));
    }

    private Path print(YearAnswer year, HonestyAnswer honesty) {
        Path file = folder.resolve("year.pdf");
        new YearPaper(Catalogue.shipped(), PaperSize.A4).print("The Warm Room", year, honesty, file);
        return file;
    }

    @Test
    void aFullYearStandsOnOnePage() {
        Path file = folder.resolve("year.pdf");
        YearPaper.Printed printed =
                new YearPaper(Catalogue.shipped(), PaperSize.A4).print("The Warm Room", year(30), honesty(30), file);
        assertThat(printed.pages()).isEqualTo(1);
        assertThat(Rendered.text(file))
                .contains(
                        "2025 in The Warm Room",
                        "780 hours clocked",
                        "still here",
                        "and 22 more",
                        "as honest as can be");
    }

    /** The bar of December is twelve times that of January: its top is inked where January's column is white. */
    @Test
    void barsStandForTheirNumbers() {
        Path file = print(year(1), honesty(0));
        Rendered page = Rendered.page(file, 1, 100);
        double top = firstBarTop(page);
        double step = new Columns(PaperSize.A4, 2, 0).width() / 12;
        double december = Columns.MARGIN + 11.25 * step;
        double january = Columns.MARGIN + 0.25 * step;
        assertThat(page.inked(new Rectangle2D.Double(december, top + 4, 1, 1))).isTrue();
        assertThat(page.inked(new Rectangle2D.Double(january, top + 4, 1, 1))).isFalse();
    }

    /** Down the middle of December's bar of the first plot: where a long run of ink begins. */
    private static double firstBarTop(Rendered page) {
        double step = new Columns(PaperSize.A4, 2, 0).width() / 12;
        int x = page.pixels(Columns.MARGIN + 11.25 * step);
        int run = 0;
        for (int y = 0; y < page.image().getHeight(); y++) {
            run = page.dark(x, y) ? run + 1 : 0;
            if (page.mm(run) > 10) {
                return page.mm(y - run);
            }
        }
        throw new AssertionError("no bar");
    }

    @Test
    void aYearWithLittleInItIsPrintedToo() {
        YearAnswer few = year(0);
        assertThat(Rendered.text(print(few, honesty(0)))).contains("none");
    }
}
