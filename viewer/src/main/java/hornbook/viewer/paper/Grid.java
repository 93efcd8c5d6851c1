package hornbook.viewer.paper;

import java.util.List;

/**
 * A row of a table. What does not fit its cell goes on in the next line.
 *
 * @param shares of the width, one a cell; they add up to 1
 */
public record Grid(List<Prose> cells, List<Double> shares, boolean head, double points) implements Piece {
    private static final double LEADING = 1.22 * Typeface.POINT;
    private static final double GAP = 1;

    public Grid {
        cells = List.copyOf(cells);
        shares = List.copyOf(shares);
    }

    /** The names of the columns. */
    public static Grid head(List<String> cells, List<Double> shares, double points) {
        return new Grid(cells.stream().map(text -> new Prose().bold(text)).toList(), shares, true, points);
    }

    public static Grid row(List<String> cells, List<Double> shares, double points) {
        return new Grid(cells.stream().map(text -> new Prose().plain(text)).toList(), shares, false, points);
    }

    @Override
    public boolean leads() {
        return head;
    }

    @Override
    public double height(Sheet sheet, double width) {
        int most = 1;
        for (int i = 0; i < cells.size(); i++) {
            most = Math.max(most, lines(sheet, i, width).size());
        }
        return most * points * LEADING;
    }

    @Override
    public void draw(Sheet sheet, double x, double y, double width) {
        double left = x;
        for (int i = 0; i < cells.size(); i++) {
            double foot = y;
            for (Prose.Line line : lines(sheet, i, width)) {
                foot += points * LEADING;
                line.draw(sheet, left, foot - 0.27 * points * Typeface.POINT, points);
            }
            left += shares.get(i) * width;
        }
    }

    private List<Prose.Line> lines(Sheet sheet, int cell, double width) {
        return cells.get(cell).lines(sheet, points, shares.get(cell) * width - GAP);
    }
}
