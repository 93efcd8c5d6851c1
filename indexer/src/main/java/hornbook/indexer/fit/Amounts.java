package hornbook.indexer.fit;

import java.util.ArrayList;
import java.util.List;

/**
 * By how much one operation may change a size: the least and the most, and the amounts after which the next unit of work
 * begins.
 *
 * @param least that its check asks for, mm
 * @param limits amounts at which its limit or its check just holds, mm
 * @param steps amounts done in one unit of work, mm; none where its minutes are the same for any amount
 */
record Amounts(double least, List<Double> limits, List<Double> steps) {
    Amounts {
        limits = List.copyOf(limits);
        steps = List.copyOf(steps);
    }

    /** On a piece as it stands at a node. */
    static Amounts of(Move move, Node node, Aim aim) {
        double least = 0;
        List<Double> limits = new ArrayList<>();
        for (int n = 1; n <= move.most(); n++) {
            Double most = move.operation().maxAmount();
            if (most != null) {
                limits.add(most * n);
            }
            for (Comparison comparison : move.check().all()) {
                double limit = limit(comparison, move, node, aim, n);
                if (comparison.holds(sight(move, node, aim, limit / 2, n))) {
                    limits.add(limit);
                } else if (!Double.isNaN(limit)) {
                    least = Math.max(least, limit);
                }
            }
        }
        limits.removeIf(limit -> limit.isNaN());
        return new Amounts(least, limits.stream().distinct().toList(), steps(move, node, aim));
    }

    /** Where a comparison just holds; not a number where it does not look at the amount. */
    private static double limit(Comparison comparison, Move move, Node node, Aim aim, int n) {
        return comparison.looksAt("amt")
                ? Line.root(amount -> comparison.difference(sight(move, node, aim, amount, n)), 1, 2)
                        .orElse(Double.NaN)
                : Double.NaN;
    }

    private static List<Double> steps(Move move, Node node, Aim aim) {
        List<Formula> jumps = new ArrayList<>();
        move.units().jumps(jumps);
        return jumps.stream()
                .filter(jump -> jump.names().contains("amt"))
                .flatMap(jump -> Line.root(amount -> jump.value(sight(move, node, aim, amount, 1)) - 1, 1, 2).stream()
                        .boxed())
                .toList();
    }

    private static Sight sight(Move move, Node node, Aim aim, double amount, int n) {
        // Only the amount between the two is looked at.
        return aim.sight(node, move, Value.of(0), Value.of(amount), n);
    }

    double most() {
        return limits.stream().mapToDouble(Double::doubleValue).max().orElse(Double.POSITIVE_INFINITY);
    }

    /** Amounts worth trying: the least, the limits, and whole units of work up to what is asked for and one more. */
    List<Double> upTo(double far, double atLeast) {
        double least = Math.max(this.least, atLeast);
        List<Double> all = new ArrayList<>(limits);
        all.add(least);
        for (double step : steps) {
            for (int units = 1; units * step < far + step; units++) {
                all.add(units * step);
            }
        }
        double most = most();
        return all.stream()
                .filter(amount -> amount > Formula.NOTHING
                        && amount >= least - Formula.NOTHING
                        && amount <= most + Formula.NOTHING)
                .toList();
    }
}
