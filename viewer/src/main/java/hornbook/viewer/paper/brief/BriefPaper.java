package hornbook.viewer.paper.brief;

import hornbook.catalogue.entry.Catalogue;
import hornbook.indexer.brief.BriefAnswer;
import hornbook.viewer.paper.Columns;
import hornbook.viewer.paper.Columns.Spot;
import hornbook.viewer.paper.Face;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.Printed;
import hornbook.viewer.paper.Prose;
import hornbook.viewer.paper.Sheet;
import hornbook.viewer.paper.Typeface;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Prints a brief on two pages at most, to lie by the horn: black on white, boxes to tick.
 *
 * <pre>{@code
 * new BriefPaper(catalogue, PaperSize.A4).print(brief, "h-194, 19433T", Path.of("brief.pdf"));
 * }</pre>
 */
public final class BriefPaper {
    private static final int PAGES = 2;
    private static final int COLUMNS = 2;
    private static final double TITLE = 15;
    private static final double SAYS = 9;
    private static final double LEADING = 1.25 * Typeface.POINT;
    private static final double SMALL = 7;
    private static final double RULE = 0.6;
    private static final double NUMBER = 15;
    private static final String REST = "Left out here for want of room, on the screen in full: ";

    private final Catalogue catalogue;
    private final PaperSize paper;

    public BriefPaper(Catalogue catalogue, PaperSize paper) {
        this.catalogue = catalogue;
        this.paper = paper;
    }

    /**
     * Writes the pages; the file holds all of them or is as it was.
     *
     * @param about what stands at the head beside the model: the horn's number, the day; never a customer
     * @throws hornbook.shared.shop.BadInput where the file cannot be written
     */
    public Printed print(BriefAnswer brief, String about, Path file) {
        try (Sheet sheet = new Sheet(paper, "Brief")) {
            Head head = new Head(sheet, brief, about);
            Columns columns = new Columns(paper, COLUMNS, head.below());
            Fitted fitted = fit(sheet, columns, brief);
            for (int page = 0; page < fitted.pages(); page++) {
                sheet.page();
                if (page == 0) {
                    head.draw();
                }
                int shown = page;
                fitted.spots().stream().filter(spot -> spot.page() == shown).forEach(spot -> columns.draw(sheet, spot));
                foot(sheet, columns, page + 1 + " of " + fitted.pages(), fitted.leftOut());
            }
            sheet.save(file);
            return new Printed(file.toString(), sheet.pages(), fitted.leftOut());
        }
    }

    private record Fitted(List<Spot> spots, List<String> leftOut) {
        int pages() {
            return spots.getLast().page() + 1;
        }
    }

    /** The fullest that two pages hold. If even the leanest is longer, the end is left out and said to be. */
    private Fitted fit(Sheet sheet, Columns columns, BriefAnswer brief) {
        for (int cut = 0; cut <= BriefDetail.MOST_CUT; cut++) {
            Optional<Fitted> fitted = largest(sheet, columns, brief, cut);
            if (fitted.isPresent()) {
                return fitted.get();
            }
        }
        BriefDetail leanest =
                new BriefDetail(BriefDetail.sizes(BriefDetail.MOST_CUT).getFirst(), BriefDetail.MOST_CUT);
        Fitted all = at(sheet, columns, brief, leanest);
        List<Spot> kept =
                all.spots().stream().filter(spot -> spot.page() < PAGES).toList();
        List<String> leftOut = new ArrayList<>(all.leftOut());
        leftOut.add("the last " + (all.spots().size() - kept.size()) + " lines");
        return new Fitted(kept, leftOut);
    }

    /** In the largest type that two pages hold. */
    private Optional<Fitted> largest(Sheet sheet, Columns columns, BriefAnswer brief, int cut) {
        Optional<Fitted> best = Optional.empty();
        for (double points : BriefDetail.sizes(cut)) {
            Fitted fitted = at(sheet, columns, brief, new BriefDetail(points, cut));
            if (fitted.pages() > PAGES) {
                break;
            }
            best = Optional.of(fitted);
        }
        return best;
    }

    private Fitted at(Sheet sheet, Columns columns, BriefAnswer brief, BriefDetail detail) {
        BriefPieces pieces = new BriefPieces(catalogue, detail);
        return new Fitted(columns.place(sheet, pieces.of(brief)), pieces.leftOut(brief));
    }

    private static void foot(Sheet sheet, Columns columns, String number, List<String> leftOut) {
        double y = columns.bottom() + 2;
        double width = columns.paper().width() - 2 * Columns.MARGIN;
        double right = Columns.MARGIN + width - sheet.width(number, Face.PLAIN, SMALL);
        sheet.text(number, Face.PLAIN, right, y + SMALL * LEADING, SMALL, 0);
        if (leftOut.isEmpty()) {
            return;
        }
        Prose rest = new Prose().plain(REST + String.join(", ", leftOut) + ".");
        for (Prose.Line line : rest.lines(sheet, SMALL, width - NUMBER)) {
            y += SMALL * LEADING;
            line.draw(sheet, Columns.MARGIN, y, SMALL);
        }
    }

    /** What horn this is, over both columns. */
    private record Head(Sheet sheet, BriefAnswer brief, String about) {
        private double width() {
            return sheet.size().width() - 2 * Columns.MARGIN;
        }

        private List<Prose.Line> title() {
            String title = brief.title() == null ? "A horn not known yet" : brief.title();
            return new Prose().bold(title).lines(sheet, TITLE, width());
        }

        private List<Prose.Line> says() {
            return new Prose().plain(brief.says()).bold(about).lines(sheet, SAYS, width());
        }

        double below() {
            return Columns.MARGIN + LEADING * (TITLE * title().size() + SAYS * says().size()) + 3;
        }

        void draw() {
            double y = Columns.MARGIN;
            for (Prose.Line line : title()) {
                y += TITLE * LEADING;
                line.draw(sheet, Columns.MARGIN, y - 0.3 * TITLE * Typeface.POINT, TITLE);
            }
            for (Prose.Line line : says()) {
                y += SAYS * LEADING;
                line.draw(sheet, Columns.MARGIN, y - 0.3 * SAYS * Typeface.POINT, SAYS);
            }
            sheet.line(Columns.MARGIN, y + 1, Columns.MARGIN + width(), y + 1, RULE);
        }
    }

    /**
     * What was printed.
     *
     * @param leftOut what two pages did not hold, in words
     */
    public record Printed(String file, int pages, List<String> leftOut) {
        /** Keeps its own copy. */
        public Printed {
            leftOut = List.copyOf(leftOut);
        }
    }
}
