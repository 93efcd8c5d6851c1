package hornbook.indexer.fit;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;

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

    /** Titles of the operations, in order. */
    List<String> work() {
        return end.steps.stream()
                .map(done -> done.move().operation().title().toLowerCase(Locale.ROOT))
                .toList();
    }

    boolean betterThan(Plan other) {
        return BETTER.compare(this, other) < 0;
    }
}
