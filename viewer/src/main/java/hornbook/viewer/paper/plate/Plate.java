package hornbook.viewer.paper.plate;

import hornbook.catalogue.picture.Picture;
import hornbook.viewer.paper.Drawing;
import hornbook.viewer.paper.Sheet;
import hornbook.viewer.paper.Typeface;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * A drawing with its words beneath.
 *
 * @param word as written in commands and files
 * @param meaning in plain words; may be empty
 */
record Plate(Picture picture, String word, String meaning) {
    private static final double WORD = 9;
    private static final double TEXT = 7;
    private static final double LEADING = 1.25 * Typeface.POINT;
    private static final double GAP = 1.5;
    private static final double ALT_GREY = 0.3;

    /** What it needs below its picture at that width, mm. */
    double words(Sheet sheet, double width) {
        return GAP
                + WORD * LEADING * wordLines(sheet, width).size()
                + TEXT
                        * LEADING
                        * (lines(sheet, meaning, width).size()
                                + lines(sheet, picture.alt(), width).size());
    }

    /** Draws it; nothing of its text is left out. */
    void print(Sheet sheet, Rectangle2D box) {
        Drawing.draw(sheet, picture, box);
        double width = box.getWidth();
        double y = put(sheet, wordLines(sheet, width), box.getX(), box.getMaxY() + GAP, WORD, 0);
        y = put(sheet, lines(sheet, meaning, width), box.getX(), y, TEXT, 0);
        put(sheet, lines(sheet, picture.alt(), width), box.getX(), y, TEXT, ALT_GREY);
    }

    private List<String> wordLines(Sheet sheet, double width) {
        return sheet.lines(word, WORD, width, Integer.MAX_VALUE);
    }

    private static List<String> lines(Sheet sheet, String text, double width) {
        return sheet.lines(text, TEXT, width, Integer.MAX_VALUE);
    }

    private static double put(Sheet sheet, List<String> lines, double x, double top, double points, double grey) {
        double y = top;
        for (String line : lines) {
            y += points * LEADING;
            sheet.text(line, x, y - (LEADING - Typeface.POINT) * points, points, grey);
        }
        return y;
    }
}
