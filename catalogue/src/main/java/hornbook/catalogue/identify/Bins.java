package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Normal;
import hornbook.catalogue.entry.Span;
import java.util.Arrays;
import java.util.List;

/** Readings of a measure cut into bins that all entries together fill alike, so that a gain can be reckoned. */
final class Bins {
    private static final int MOST = 32;
    private static final double[] STEPS = {-1.5, -0.7, 0, 0.7, 1.5};

    private final double[] cuts;
    private final List<Normal> stated;
    private final double[] background;
    private final double gauge;
    private final double usualSd;

    Bins(List<Normal> stated, double gauge, Span span) {
        this.stated = stated;
        this.gauge = gauge;
        this.usualSd = stated.stream().mapToDouble(Normal::sd).average().orElse(gauge);
        this.cuts = cuts(stated, gauge);
        this.background = background(span);
    }

    private static double[] cuts(List<Normal> stated, double gauge) {
        double[] points = stated.stream()
                .flatMap(n -> Arrays.stream(STEPS).mapToObj(s -> n.mean() + s * Math.hypot(n.sd(), gauge)))
                .mapToDouble(Double::doubleValue)
                .sorted()
                .toArray();
        int bins = Math.min(MOST, Math.max(1, points.length / 2));
        double[] cuts = new double[bins - 1];
        for (int i = 1; i < bins; i++) {
            cuts[i - 1] = points[i * points.length / bins];
        }
        return Arrays.stream(cuts).distinct().toArray();
    }

    private double[] background(Span span) {
        double[] mean = new double[size()];
        double[] row = new double[size()];
        for (Normal normal : stated) {
            chances(normal, 0, row);
            for (int i = 0; i < mean.length; i++) {
                mean[i] += row[i] / (stated.size() + 1);
            }
        }
        for (int i = 0; i < mean.length; i++) {
            double low = i == 0 ? span.low() : Math.clamp(cuts[i - 1], span.low(), span.high());
            double high = i == cuts.length ? span.high() : Math.clamp(cuts[i], span.low(), span.high());
            mean[i] += (high - low) / (span.high() - span.low()) / (stated.size() + 1);
        }
        return mean;
    }

    int size() {
        return cuts.length + 1;
    }

    double usualSd() {
        return usualSd;
    }

    void background(double[] into) {
        System.arraycopy(background, 0, into, 0, background.length);
    }

    /** Chance of a reading in each bin, for an entry of that mean and spread. */
    void chances(Normal own, double miss, double[] into) {
        Normal near = new Normal(own.mean(), Math.hypot(own.sd(), gauge));
        Normal far = new Normal(own.mean(), Math.hypot(own.sd(), 6 * gauge));
        double before = 0;
        for (int i = 0; i < size(); i++) {
            double upTo =
                    i == cuts.length ? 1 : (1 - miss) * Bell.below(cuts[i], near) + miss * Bell.below(cuts[i], far);
            into[i] = Math.max(0, upTo - before);
            before = upTo;
        }
    }

    /** Share of all stated horns whose measure lies in the range. */
    double shareWithin(double low, double high) {
        return stated.stream()
                .mapToDouble(n -> Bell.below(high, n) - Bell.below(low, n))
                .average()
                .orElse(0.5);
    }
}
