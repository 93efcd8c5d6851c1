package hornbook.viewer.paper;

/** A paragraph in a column. */
public record Words(String text, double points) implements Piece {
    private static final double LEADING = 1.25 * Typeface.POINT;
    private static final double BELOW = 1;

    @Override
    public double height(Sheet sheet, double width) {
        return points
                        * LEADING
                        * new Prose().plain(text).lines(sheet, points, width).size()
                + BELOW;
    }

    @Override
    public void draw(Sheet sheet, double x, double y, double width) {
        double foot = y;
        for (Prose.Line line : new Prose().plain(text).lines(sheet, points, width)) {
            foot += points * LEADING;
            line.draw(sheet, x, foot - 0.3 * points * Typeface.POINT, points);
        }
    }
}
