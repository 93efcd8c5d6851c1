package hornbook.viewer.paper.year;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.estimate.HonestyAnswer;
import hornbook.shared.year.YearAnswer;
import hornbook.viewer.paper.Columns;
import hornbook.viewer.paper.Columns.Spot;
import hornbook.viewer.paper.Face;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.Printed;
import hornbook.viewer.paper.Prose;
import hornbook.viewer.paper.Sheet;
import hornbook.viewer.paper.Typeface;
import java.nio.file.Path;
import java.util.List;

/** Prints a year in the shop: on one page as a rule, with bars that any printer shows. */
public final class YearPaper {
    private static final int COLUMNS = 2;
    private static final double TITLE = 16;
    private static final double SAYS = 9.5;
    private static final double LEADING = 1.25 * Typeface.POINT;
    private static final double RULE = 0.6;
    private static final double SMALL = 7;

    private final Catalogue catalogue;
    private final PaperSize paper;

    public YearPaper(Catalogue catalogue, PaperSize paper) {
        this.catalogue = catalogue;
        this.paper = paper;
    }

    /**
     * Writes the page.
     *
     * @param shop what the shop is called
     * @param estimates of all years up to that one, for how they went
     * @throws hornbook.shared.shop.BadInput where the file cannot be written
     */
    public Printed print(String shop, YearAnswer year, HonestyAnswer estimates, Path file) {
        String title = year.year() + " in " + shop;
        try (Sheet sheet = new Sheet(paper, title)) {
            double width = paper.width() - 2 * Columns.MARGIN;
            List<Prose.Line> head = new Prose().bold(title).lines(sheet, TITLE, width);
            List<Prose.Line> says = new Prose().plain(YearPieces.says(year)).lines(sheet, SAYS, width);
            double top = Columns.MARGIN + LEADING * (TITLE * head.size() + SAYS * says.size()) + 4;
            Columns columns = new Columns(paper, COLUMNS, top);
            List<Spot> spots = columns.place(sheet, new YearPieces(catalogue).of(year, estimates));
            int pages = spots.getLast().page() + 1;
            for (int page = 0; page < pages; page++) {
                sheet.page();
                int shown = page;
                spots.stream().filter(spot -> spot.page() == shown).forEach(spot -> columns.draw(sheet, spot));
                foot(sheet, title + ", page " + (page + 1) + " of " + pages, columns.bottom());
                if (page == 0) {
                    double y = lines(sheet, head, Columns.MARGIN, TITLE);
                    y = lines(sheet, says, y, SAYS);
                    sheet.line(Columns.MARGIN, y + 1, Columns.MARGIN + width, y + 1, RULE);
                }
            }
            sheet.save(file);
            return new Printed(file.toString(), pages);
        }
    }

    private static double lines(Sheet sheet, List<Prose.Line> lines, double top, double points) {
        double y = top;
        for (Prose.Line line : lines) {
            y += points * LEADING;
            line.draw(sheet, Columns.MARGIN, y - 0.3 * points * Typeface.POINT, points);
        }
        return y;
    }

    private static void foot(Sheet sheet, String text, double bottom) {
        sheet.text(text, Face.PLAIN, Columns.MARGIN, bottom + 2 + SMALL * LEADING, SMALL, 0);
    }

    /** What was printed. */
    public record Printed(String file, int pages) {}
}
