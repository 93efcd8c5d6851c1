package hornbook.indexer.fit;

import java.util.Comparator;

/**
 * A way to make a piece fit.
 *
 * @param minutes of work
 * @param charge for spoiling, minutes
 */
record Plan(Node end, double minutes, double charge) {
    private static final Comparator<Plan> BETTER = Comparator.<Plan>comparingLong(p -> Math.round(p.total() * 1e6))
            .thenComparingInt(p -> p.end.steps.size())
            .thenComparingDouble(p -> p.end.off);

    double total() {
        return minutes + charge;
    }

    boolean betterThan(Plan other) {
        return BETTER.compare(this, other) < 0;
    }
}
