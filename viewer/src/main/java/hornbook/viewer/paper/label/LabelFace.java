package hornbook.viewer.paper.label;

import hornbook.viewer.paper.Ink;
import hornbook.viewer.paper.Lines;
import hornbook.viewer.paper.Sheet;
import hornbook.viewer.paper.Typeface;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** One label in its cell: heading, contents and number at the left, the code at the right, cut marks at the corners. */
final class LabelFace {
    private static final List<Double> HEADINGS = List.of(22.0, 18.0, 16.0, 14.0, 12.0, 11.0, 10.0);
    private static final double CONTENTS = 8;
    private static final double FOOT = 6;
    private static final double LEADING = 1.2 * Typeface.POINT;
    private static final double HEADING_SHARE = 0.6;
    private static final double CODE_SHARE = 0.3;
    private static final double SMALLEST_CODE = 14;
    /** Many printers leave the outermost 4 to 5 mm of paper white (common practice). */
    private static final double MARGIN = 5;

    private static final double MARGIN_SHARE = 0.135;
    private static final int FREE_MODULES = 4;
    private static final double MARK = 1.5;

    private final Sheet sheet;
    private final Rectangle2D cell;
    private final double margin;

    LabelFace(Sheet sheet, Rectangle2D cell) {
        this.sheet = sheet;
        this.cell = cell;
        margin = Math.min(MARGIN, MARGIN_SHARE * cell.getHeight());
    }

    void print(Label label) {
        Code code = new Code(label.code());
        double height = cell.getHeight() - 2 * margin;
        double side = Math.min(height, Math.max(SMALLEST_CODE, CODE_SHARE * cell.getWidth()));
        double left = cell.getMaxX() - margin - side;
        sheet.draw(code.outline(left, cell.getCenterY() - side / 2, side), Ink.area(0));
        text(label, left - FREE_MODULES * side / code.modules() - cell.getX() - margin, height);
        marks();
    }

    private void text(Label label, double width, double height) {
        double points = headingSize(label.heading(), width, height);
        int most = Math.max(1, (int) (HEADING_SHARE * height / (points * LEADING)));
        double y = lines(sheet.lines(label.heading(), points, width, most), points, cell.getY() + margin);
        double foot = cell.getMaxY() - margin;
        double left = foot - FOOT * LEADING - y;
        int room = (int) (left / (CONTENTS * LEADING));
        lines(sheet.lines(label.contents(), CONTENTS, width, room), CONTENTS, y);
        for (String line : sheet.lines(label.id(), FOOT, width, 1)) {
            sheet.text(line, cell.getX() + margin, foot, FOOT, 0);
        }
    }

    /** The largest size at which the whole heading stands in its share without a word broken; else the smallest. */
    private double headingSize(String heading, double width, double height) {
        for (double points : HEADINGS) {
            Lines lines = sheet.breaking(points, width);
            boolean low = lines.all(heading).size() * points * LEADING <= HEADING_SHARE * height;
            if (low && lines.wordsFit(heading)) {
                return points;
            }
        }
        return HEADINGS.getLast();
    }

    private double lines(List<String> lines, double points, double top) {
        double y = top;
        for (String line : lines) {
            y += points * LEADING;
            sheet.text(line, cell.getX() + margin, y - (LEADING - Typeface.POINT) * points, points, 0);
        }
        return y;
    }

    private void marks() {
        for (double x : new double[] {cell.getX(), cell.getMaxX()}) {
            for (double y : new double[] {cell.getY(), cell.getMaxY()}) {
                sheet.draw(cross(x, y), Ink.line(0.1, 0.5));
            }
        }
    }

    private static Path2D cross(double x, double y) {
        Path2D.Double cross = new Path2D.Double();
        cross.moveTo(x - MARK, y);
        cross.lineTo(x + MARK, y);
        cross.moveTo(x, y - MARK);
        cross.lineTo(x, y + MARK);
        return cross;
    }
}
