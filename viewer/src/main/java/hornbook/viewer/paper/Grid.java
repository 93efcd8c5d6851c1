package hornbook.viewer.paper;

import java.util.List;

/**
 * A row of a table. Cells are printed on one line each, cut with an ellipsis where they do not fit.
 *
 * @param shares of the width, one a cell; they add up to 1
 */
record Grid(List<String> cells, List<Double> shares, boolean head, double points) implements Piece {
    private static final double LEADING = 1.22 * Typeface.POINT;
    private static final double GAP = 1;

    Grid {
        cells = List.copyOf(cells);
        shares = List.copyOf(shares);
    }

    @Override
    public boolean leads() {
        return head;
    }

    @Override
    public double height(Sheet sheet, double width) {
        return points * LEADING;
    }

    @Override
    public void draw(Sheet sheet, double x, double y, double width) {
        Face face = head ? Face.BOLD : Face.PLAIN;
        double left = x;
        for (int i = 0; i < cells.size(); i++) {
            double wide = shares.get(i) * width;
            Lines lines = new Lines(wide - GAP, text -> sheet.width(text, face, points));
            for (String line : lines.first(1, cells.get(i))) {
                sheet.text(line, face, left, y + points * (LEADING - 0.27 * Typeface.POINT), points, 0);
            }
            left += wide;
        }
    }
}
