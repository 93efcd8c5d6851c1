package hornbook.viewer.paper.year;

import hornbook.viewer.paper.Face;
import hornbook.viewer.paper.Ink;
import hornbook.viewer.paper.Outlines;
import hornbook.viewer.paper.Piece;
import hornbook.viewer.paper.Sheet;
import hornbook.viewer.paper.Typeface;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;

/**
 * Bars by month on one scale, each with its number over it; where there is a second row, beside the first and hatched by
 * being left open.
 *
 * @param full from January on; printed dark
 * @param open of the same months, or empty; printed as outlines
 */
record MonthBars(List<Double> full, List<Double> open, double tall) implements Piece {
    private static final double POINTS = 6.5;
    private static final double LINE = 1.25 * POINTS * Typeface.POINT;
    private static final double BELOW = 2;
    private static final double FILL = 0.35;
    private static final double EDGE = 0.25;
    private static final double BETWEEN = 0.3;
    private static final int MONTHS = 12;

    MonthBars {
        full = List.copyOf(full);
        open = List.copyOf(open);
    }

    @Override
    public double height(Sheet sheet, double width) {
        return tall + 2 * LINE + BELOW;
    }

    @Override
    public void draw(Sheet sheet, double x, double y, double width) {
        double most = Math.max(most(full), most(open));
        double foot = y + LINE + tall;
        double step = width / MONTHS;
        double bar = step * (1 - BETWEEN) / (open.isEmpty() ? 1 : 2);
        for (int month = 0; month < full.size(); month++) {
            double left = x + month * step + step * BETWEEN / 2;
            bar(sheet, left, foot, bar, full.get(month), most, true);
            if (!open.isEmpty()) {
                bar(sheet, left + bar, foot, bar, open.get(month), most, false);
            }
        }
        sheet.line(x, foot, x + width, foot, EDGE);
        for (int month = 0; month < MONTHS; month++) {
            String name = Month.of(month + 1).getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
            middle(sheet, name, x + (month + 0.5) * step, foot + LINE);
        }
    }

    private void bar(Sheet sheet, double left, double foot, double wide, double value, double most, boolean dark) {
        double high = most == 0 ? 0 : tall * value / most;
        if (high > 0) {
            Ink ink = dark ? Ink.area(FILL) : Ink.line(EDGE, 0);
            sheet.draw(Outlines.box(left, foot - high, wide, high), ink);
        }
        String number = value == 0 ? "–" : String.valueOf(Math.round(value));
        middle(sheet, number, left + wide / 2, foot - high - 0.6);
    }

    private static void middle(Sheet sheet, String text, double x, double y) {
        sheet.text(text, Face.PLAIN, x - sheet.width(text, Face.PLAIN, POINTS) / 2, y, POINTS, 0);
    }

    private static double most(List<Double> values) {
        return values.stream().mapToDouble(v -> v).max().orElse(0);
    }
}
