package hornbook.viewer.paper;

import hornbook.viewer.paper.Columns.Spot;
import java.nio.file.Path;
import java.util.List;

/** Chapters of pieces down as many pages as they take, each chapter from a new page, numbered at the foot. */
public final class Pages {
    private static final double SMALL = 8;

    private final Columns columns;
    private final String title;

    public Pages(PaperSize paper, String title) {
        this.columns = new Columns(paper, 1, Columns.MARGIN);
        this.title = title;
    }

    /** Writes them. @throws hornbook.shared.shop.BadInput where the file cannot be written */
    public Printed print(List<List<Piece>> chapters, Path file) {
        try (Sheet sheet = new Sheet(columns.paper(), title)) {
            chapters.forEach(chapter -> print(sheet, chapter));
            sheet.save(file);
            return new Printed(file.toString(), sheet.pages());
        }
    }

    private void print(Sheet sheet, List<Piece> chapter) {
        int page = -1;
        for (Spot spot : columns.place(sheet, chapter)) {
            if (spot.page() > page) {
                page = spot.page();
                begin(sheet);
            }
            columns.draw(sheet, spot);
        }
    }

    private void begin(Sheet sheet) {
        sheet.page();
        String number = String.valueOf(sheet.pages());
        double foot = columns.bottom() + 6;
        double right = Columns.MARGIN + columns.width() - sheet.width(number, Face.PLAIN, SMALL);
        sheet.text(title, Face.PLAIN, Columns.MARGIN, foot, SMALL, 0);
        sheet.text(number, Face.PLAIN, right, foot, SMALL, 0);
    }
}
