package hornbook.catalogue.diagnose;

import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * The order of checks against every order, on random problems of up to eight causes; and, as its control, the bare rule
 * that looks one check ahead. {@code --n N --seed S}
 */
public final class DiagnoseTrial {
    private static final int MOST = 8;

    private DiagnoseTrial() {}

    /** How far over the least an order came out: on average, and at worst. */
    record Over(double mean, double worst) {}

    /** What a trial gave. */
    record Result(Over apart, Over shared, Over oneAhead) {}

    static Result run(int n, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] sums = new double[3];
        double[] worst = new double[3];
        for (int i = 0; i < n; i++) {
            List<Check> apart = Exhaustive.problem(random, MOST, false);
            List<Check> shared = Exhaustive.problem(random, MOST, true);
            double[] over = {
                over(apart, ordered(apart)), over(shared, ordered(shared)), over(shared, OneAhead.order(shared))
            };
            for (int k = 0; k < over.length; k++) {
                sums[k] += over[k] / n;
                worst[k] = Math.max(worst[k], over[k]);
            }
        }
        return new Result(new Over(sums[0], worst[0]), new Over(sums[1], worst[1]), new Over(sums[2], worst[2]));
    }

    private static List<Check> ordered(List<Check> checks) {
        return CheckOrder.of(checks, Set.of()).stream()
                .map(CheckOrder.Choice::check)
                .toList();
    }

    private static double over(List<Check> checks, List<Check> order) {
        double rest = 1 - checks.stream().mapToDouble(Check::chance).sum();
        return CheckOrder.minutes(order, rest, Set.of()) / Exhaustive.bySets(checks, rest) - 1;
    }

    public static void main(String[] args) {
        int n = 10_000;
        long seed = 1;
        for (int i = 0; i + 1 < args.length; i += 2) {
            if (args[i].equals("--n")) {
                n = Integer.parseInt(args[i + 1]);
            } else if (args[i].equals("--seed")) {
                seed = Long.parseLong(args[i + 1]);
            }
        }
        Result result = run(n, seed);
        System.out.printf(
                "%d problems of 2 to %d causes, number %d; minutes over the least of every order:%n", n, MOST, seed);
        print("no shared set-ups", result.apart());
        print("shared set-ups", result.shared());
        print("shared, one check ahead (control)", result.oneAhead());
    }

    private static void print(String what, Over over) {
        System.out.printf("  %-34s mean %.6f %%, worst %.6f %%%n", what, 100 * over.mean(), 100 * over.worst());
    }
}
