package hornbook.viewer.paper;

import java.util.List;

/** The name of what follows, over a rule. */
public record Headline(String text, double points) implements Piece {
    private static final double LEADING = 1.25 * Typeface.POINT;
    private static final double ABOVE = 0.5 * Typeface.POINT;
    private static final double BELOW = 0.45 * Typeface.POINT;
    private static final double RULE = 0.3;

    @Override
    public boolean leads() {
        return true;
    }

    @Override
    public double height(Sheet sheet, double width) {
        return points * (ABOVE + BELOW + LEADING * lines(sheet, width).size());
    }

    @Override
    public void draw(Sheet sheet, double x, double y, double width) {
        double foot = y + points * ABOVE;
        for (Prose.Line line : lines(sheet, width)) {
            foot += points * LEADING;
            line.draw(sheet, x, foot - 0.3 * points * Typeface.POINT, points);
        }
        sheet.line(x, foot, x + width, foot, RULE);
    }

    private List<Prose.Line> lines(Sheet sheet, double width) {
        return new Prose().bold(text).lines(sheet, points, width);
    }
}
