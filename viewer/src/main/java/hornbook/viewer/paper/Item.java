package hornbook.viewer.paper;

import hornbook.catalogue.picture.Picture;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Some words of a list with what marks them, and a drawing at their right where there is one.
 *
 * @param points size of the type
 * @param drawing at the right; none where absent
 */
public record Item(
        Prose prose, Mark mark, double points, @Nullable Picture drawing) implements Piece {
    private static final double LEADING = 1.22 * Typeface.POINT;
    private static final double AFTER = 0.22 * Typeface.POINT;
    private static final double INDENT = 0.9 * Typeface.POINT;
    private static final double BAR = 1.8;
    private static final double BAR_LINE = 0.3;
    private static final double DRAWING = 12;
    private static final double GAP = 1.5;

    /** What stands before the words. */
    public enum Mark {
        NONE,
        /** A dash. */
        POINT,
        /** A black bar along all of it: this can ruin the horn or hurt somebody. */
        STOP,
        /** The bar left white: it may be so. */
        STOP_POSSIBLE
    }

    public static Item of(Prose prose, Mark mark, double points) {
        return new Item(prose, mark, points, null);
    }

    private boolean barred() {
        return mark == Mark.STOP || mark == Mark.STOP_POSSIBLE;
    }

    private double indent() {
        return switch (mark) {
            case NONE -> 0;
            case POINT -> points * INDENT;
            case STOP, STOP_POSSIBLE -> BAR + GAP;
        };
    }

    private double inner(Sheet sheet, double width) {
        double text = points * LEADING * lines(sheet, width).size();
        return Math.max(text, drawing == null ? 0 : DRAWING);
    }

    @Override
    public double height(Sheet sheet, double width) {
        return inner(sheet, width) + points * AFTER + (barred() ? GAP / 2 : 0);
    }

    @Override
    public void draw(Sheet sheet, double x, double y, double width) {
        double tall = inner(sheet, width);
        if (barred()) {
            Ink ink = mark == Mark.STOP ? Ink.area(0) : Ink.line(BAR_LINE, 0);
            double in = mark == Mark.STOP ? 0 : BAR_LINE / 2;
            sheet.draw(Outlines.box(x + in, y + in, BAR - 2 * in, tall - 2 * in), ink);
        }
        double foot = y;
        for (Prose.Line line : lines(sheet, width)) {
            foot += points * LEADING;
            line.draw(sheet, x + indent(), foot - 0.27 * points * Typeface.POINT, points);
        }
        if (mark == Mark.POINT) {
            sheet.text("–", Face.PLAIN, x, y + points * (LEADING - 0.27 * Typeface.POINT), points, 0);
        }
        if (drawing != null) {
            Drawing.draw(sheet, drawing, new Rectangle2D.Double(x + width - DRAWING, y, DRAWING, DRAWING));
        }
    }

    /** Lines beside the drawing are shorter; those that would stand below it are not. */
    private List<Prose.Line> lines(Sheet sheet, double width) {
        double whole = width - indent();
        if (drawing == null) {
            return prose.lines(sheet, points, whole);
        }
        int beside = (int) Math.ceil(DRAWING / (points * LEADING));
        return prose.lines(sheet, points, line -> line < beside ? whole - DRAWING - GAP : whole);
    }
}
