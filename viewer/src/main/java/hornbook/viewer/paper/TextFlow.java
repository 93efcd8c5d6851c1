package hornbook.viewer.paper;

import java.util.List;

/**
 * Running text down the pages of a sheet, with page numbers: headings, paragraphs, points, and room kept for what
 * somebody else draws. Lengths in millimetres, type in points.
 */
public final class TextFlow {
    private static final double MARGIN = 15;
    private static final double FOOT = 12;
    private static final double BODY = 10;
    private static final double HEADING = 14;
    private static final double SMALL = 7;
    private static final double LEADING = 1.3 * Typeface.POINT;
    private static final double POINT_INDENT = 5;
    private static final double GREY = 0.35;
    private static final int LINES_AFTER_HEADING = 3;

    private final Sheet sheet;
    private final String title;
    private double y;

    /** Begins the first page; the title stands at the foot of each. */
    public TextFlow(Sheet sheet, String title) {
        this.sheet = sheet;
        this.title = title;
        begin();
    }

    /** Where text begins, from the left edge. */
    public double left() {
        return MARGIN;
    }

    /** Width of the text. */
    public double width() {
        return sheet.size().width() - 2 * MARGIN;
    }

    /** Keeps that much height together, on the next page where this one is full. Gives its upper edge. */
    public double room(double height) {
        if (y + height > bottom() && y > MARGIN) {
            begin();
        }
        double top = y;
        y += height;
        return top;
    }

    /** A heading, never left alone at the foot of a page: {@code below} is the height that must follow it. */
    public void heading(String text, double below) {
        List<String> lines = all(text, HEADING, width());
        double height = (lines.size() + 1) * HEADING * LEADING;
        if (y + height + below > bottom() && y > MARGIN) {
            begin();
        }
        y += y > MARGIN ? HEADING * LEADING / 2 : 0;
        lines.forEach(line -> put(line, MARGIN, HEADING, 0));
        y += HEADING * LEADING / 4;
    }

    /** A heading over running text. */
    public void heading(String text) {
        heading(text, LINES_AFTER_HEADING * BODY * LEADING);
    }

    /** A paragraph, broken into lines and over pages. */
    public void paragraph(String text) {
        all(text, BODY, width()).forEach(line -> put(line, MARGIN, BODY, 0));
        gap();
    }

    /** One item of a list. */
    public void point(String text) {
        List<String> lines = all(text, BODY, width() - POINT_INDENT);
        for (int i = 0; i < lines.size(); i++) {
            put(i == 0 ? "–" : "", MARGIN, BODY, 0);
            sheet.text(lines.get(i), MARGIN + POINT_INDENT, footLine(BODY), BODY, 0);
        }
    }

    /** Space between two things. */
    public void gap() {
        y += BODY * LEADING / 2;
    }

    private List<String> all(String text, double points, double width) {
        return sheet.lines(text, points, width, Integer.MAX_VALUE);
    }

    private void put(String line, double x, double points, double grey) {
        room(points * LEADING);
        sheet.text(line, x, footLine(points), points, grey);
    }

    private double footLine(double points) {
        return y - (LEADING - Typeface.POINT) * points;
    }

    private double bottom() {
        return sheet.size().height() - MARGIN - SMALL * LEADING;
    }

    private void begin() {
        sheet.page();
        y = MARGIN;
        String number = String.valueOf(sheet.pages());
        double foot = sheet.size().height() - FOOT;
        sheet.text(title, MARGIN, foot, SMALL, GREY);
        sheet.text(number, MARGIN + width() - sheet.width(number, SMALL), foot, SMALL, GREY);
    }
}
