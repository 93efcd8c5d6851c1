package hornbook.indexer.bench;

import java.util.Arrays;
import java.util.Locale;

/** Figures of several rounds: least, middle and most. */
record Spread(double least, double middle, double most) {
    static Spread of(double[] figures) {
        double[] sorted = figures.clone();
        Arrays.sort(sorted);
        return new Spread(sorted[0], sorted[sorted.length / 2], sorted[sorted.length - 1]);
    }

    /** The value below which that share of the figures lies. */
    static double at(double[] figures, double share) {
        double[] sorted = figures.clone();
        Arrays.sort(sorted);
        return sorted[Math.min(sorted.length - 1, (int) (share * sorted.length))];
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.3g / %.3g / %.3g", least, middle, most);
    }
}
