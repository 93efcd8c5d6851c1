package hornbook.viewer.honesty;

import hornbook.catalogue.estimate.HonestyAnswer.Stretch;
import hornbook.viewer.widget.Plot;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import javafx.scene.shape.Circle;

/** Which share of jobs took no longer than P50 and P80, twenty jobs a point, about the dashed lines where they ought to lie. */
final class CoveragePlot extends Plot {
    private static final double TALL = 190;
    private static final double P50 = 0.5;
    private static final double P80 = 0.8;
    private static final double DOT = 4;

    private final List<Stretch> over;

    CoveragePlot(List<Stretch> over) {
        super(TALL);
        this.over = over;
        setId("coverage-plot");
        setAccessibleText("Shares of jobs within P50 and P80, oldest first: "
                + over.stream()
                        .map(s -> "up to %s %d and %d in 100"
                                .formatted(s.to(), Math.round(100 * s.underP50()), Math.round(100 * s.underP80())))
                        .collect(Collectors.joining("; ")));
    }

    @Override
    protected void draw() {
        line(0, 0, 1, 0, "plot-foot");
        for (int share = 0; share <= 100; share += 25) {
            scale(share / 100.0, share + " %");
        }
        line(0, P50, 1, P50, "plot-honest");
        line(0, P80, 1, P80, "plot-honest");
        curve(Stretch::underP50, "plot-p50", "P50");
        curve(Stretch::underP80, "plot-p80", "P80");
        int year = 0;
        for (int i = 0; i < over.size(); i++) {
            int now = over.get(i).to().getYear();
            if (now != year) {
                under(at(i), String.valueOf(now));
                year = now;
            }
        }
    }

    private double at(int i) {
        return over.size() == 1 ? 0.5 : (double) i / (over.size() - 1);
    }

    private void curve(ToDoubleFunction<Stretch> share, String style, String name) {
        for (int i = 0; i < over.size(); i++) {
            double y = share.applyAsDouble(over.get(i));
            if (i > 0) {
                line(at(i - 1), share.applyAsDouble(over.get(i - 1)), at(i), y, style);
            }
            add(new Circle(x(at(i)), y(y), DOT), style + "-dot");
        }
        named(share.applyAsDouble(over.getLast()), name);
    }
}
