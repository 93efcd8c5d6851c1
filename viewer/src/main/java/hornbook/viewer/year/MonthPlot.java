package hornbook.viewer.year;

import hornbook.viewer.widget.Plot;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javafx.scene.shape.Rectangle;

/** Bars by month on one scale; where there are two a month, the second is an open one. */
final class MonthPlot extends Plot {
    private static final double TALL = 150;
    private static final int MONTHS = 12;
    private static final double BAR = 0.36;
    private static final double GAP = 0.14;

    private final List<Double> first;
    private final List<Double> second;
    private final double most;

    /**
     * From January on.
     *
     * @param second as many, or none
     * @param says what it shows, for who cannot see it
     */
    MonthPlot(String id, List<Double> first, List<Double> second, String says) {
        super(TALL);
        this.first = List.copyOf(first);
        this.second = List.copyOf(second);
        most = Math.max(
                1,
                IntStream.range(0, first.size())
                        .mapToDouble(i -> Math.max(first.get(i), second.isEmpty() ? 0 : second.get(i)))
                        .max()
                        .orElse(1));
        setId(id);
        setAccessibleText(says + ": "
                + IntStream.range(0, first.size())
                        .mapToObj(i -> name(i) + " " + Math.round(first.get(i))
                                + (second.isEmpty() ? "" : " and " + Math.round(second.get(i))))
                        .collect(Collectors.joining(", ")));
    }

    @Override
    protected void draw() {
        line(0, 0, 1, 0, "plot-foot");
        scale(0, "0");
        scale(0.9, String.valueOf(Math.round(most)));
        double wide = 1.0 / MONTHS;
        for (int month = 0; month < MONTHS; month++) {
            under((month + GAP) * wide, name(month));
            if (month < first.size()) {
                double left = (month + GAP) * wide;
                bar(left, second.isEmpty() ? 2 * BAR * wide : BAR * wide, first.get(month), "plot-in");
                if (!second.isEmpty()) {
                    bar(left + BAR * wide, BAR * wide, second.get(month), "plot-back");
                }
            }
        }
    }

    private void bar(double left, double wide, double value, String style) {
        double top = y(0.9 * value / most);
        add(new Rectangle(x(left), top, x(left + wide) - x(left), y(0) - top), style);
    }

    private static String name(int month) {
        return Month.of(month + 1).getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    }
}
