package hornbook.viewer.paper.year;

import hornbook.viewer.paper.Face;
import hornbook.viewer.paper.Ink;
import hornbook.viewer.paper.Lines;
import hornbook.viewer.paper.Outlines;
import hornbook.viewer.paper.Piece;
import hornbook.viewer.paper.Sheet;
import hornbook.viewer.paper.Typeface;
import java.util.List;

/**
 * Rows with a name, a bar on one scale and what it stands for in words; a thin line may go on to a further value.
 *
 * @param names how much of the width the names take
 */
record RowBars(List<Row> rows, double names) implements Piece {
    private static final double POINTS = 7.5;
    private static final double HIGH = 1.5 * POINTS * Typeface.POINT;
    private static final double BAR = 0.55;
    private static final double SAYS = 0.3;
    private static final double BELOW = 2;
    private static final double FILL = 0.35;
    private static final double EDGE = 0.3;
    private static final double GAP = 1;

    /**
     * A row.
     *
     * @param further where the thin line ends; no more than the value for none
     * @param says what stands behind the bar
     */
    record Row(String name, double value, double further, String says) {}

    RowBars {
        rows = List.copyOf(rows);
    }

    @Override
    public double height(Sheet sheet, double width) {
        return rows.size() * HIGH + BELOW;
    }

    @Override
    public void draw(Sheet sheet, double x, double y, double width) {
        double most = rows.stream()
                .mapToDouble(row -> Math.max(row.value(), row.further()))
                .max()
                .orElse(0);
        double room = width * (1 - names - SAYS);
        double left = x + width * names;
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            double top = y + i * HIGH;
            double foot = top + 0.72 * HIGH;
            Lines lines = new Lines(width * names - GAP, text -> sheet.width(text, Face.PLAIN, POINTS));
            lines.first(1, row.name()).forEach(line -> sheet.text(line, Face.PLAIN, x, foot, POINTS, 0));
            double wide = most == 0 ? 0 : room * row.value() / most;
            double end = most == 0 ? 0 : room * Math.max(row.value(), row.further()) / most;
            if (wide > 0) {
                sheet.draw(Outlines.box(left, top + HIGH * (1 - BAR) / 2, wide, HIGH * BAR), Ink.area(FILL));
            }
            if (end > wide) {
                sheet.line(left + wide, top + HIGH / 2, left + end, top + HIGH / 2, EDGE);
            }
            sheet.text(row.says(), Face.PLAIN, left + end + GAP, foot, POINTS, 0);
        }
    }
}
