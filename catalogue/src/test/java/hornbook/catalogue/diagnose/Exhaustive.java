package hornbook.catalogue.diagnose;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;

/** The least minutes over every order of some checks, and problems to try it on. */
final class Exhaustive {
    private Exhaustive() {}

    /** Tries every order. */
    static double permuted(List<Check> checks, double rest) {
        return permuted(new ArrayList<>(), checks, rest);
    }

    private static double permuted(List<Check> begun, List<Check> left, double rest) {
        if (left.isEmpty()) {
            return CheckOrder.minutes(begun, rest, Set.of());
        }
        double least = Double.POSITIVE_INFINITY;
        for (Check next : left) {
            List<Check> longer = new ArrayList<>(begun);
            longer.add(next);
            least = Math.min(
                    least, permuted(longer, left.stream().filter(c -> c != next).toList(), rest));
        }
        return least;
    }

    /** The same by sets: what was checked so far decides what is ready and how likely it goes on, not its order. */
    static double bySets(List<Check> checks, double rest) {
        int n = checks.size();
        double[] least = new double[1 << n];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        least[0] = 0;
        for (int made = 0; made < 1 << n; made++) {
            double open = rest;
            Set<String> ready = new HashSet<>();
            for (int i = 0; i < n; i++) {
                if ((made & 1 << i) == 0) {
                    open += checks.get(i).chance();
                } else if (checks.get(i).setUp() != null) {
                    ready.add(checks.get(i).setUp());
                }
            }
            for (int i = 0; i < n; i++) {
                if ((made & 1 << i) == 0) {
                    Check next = checks.get(i);
                    boolean prepared = next.setUp() == null || ready.contains(next.setUp());
                    double takes = next.minutes() + (prepared ? 0 : next.setUpMinutes());
                    least[made | 1 << i] = Math.min(least[made | 1 << i], least[made] + open * takes);
                }
            }
        }
        return least[(1 << n) - 1];
    }

    /** One cause of up to that many, or with a small chance something else; some checks share one of three set-ups. */
    static List<Check> problem(SplittableRandom random, int most, boolean sharing) {
        int n = 2 + random.nextInt(most - 1);
        double[] setUps = {1 + 14 * random.nextDouble(), 1 + 14 * random.nextDouble(), 1 + 14 * random.nextDouble()};
        double[] weights = random.doubles(n, 0.02, 1).toArray();
        double sum = Arrays.stream(weights).sum() / 0.95;
        List<Check> checks = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            int setUp = sharing ? random.nextInt(5) : 9;
            boolean needs = setUp < setUps.length;
            checks.add(new Check(
                    "c" + i,
                    weights[i] / sum,
                    0.5 + 9.5 * random.nextDouble(),
                    needs ? "s" + setUp : null,
                    needs ? setUps[setUp] : 0));
        }
        return checks;
    }
}
