package hornbook.catalogue.estimate;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * Minutes of a list of tasks in many imagined jobs: what the history leaves open of each effect is drawn together, the
 * job's own slowness once a job, the rest of each task by itself. The same seed gives the same answer.
 */
final class Draws {
    /** So many that a quantile of the sum stands within a hundredth. */
    static final int MANY = 20_000;

    private static final long SEED = 1896;

    private final double[][] minutes;
    private final double[] sums;

    /** One task to draw: its book minutes for the whole count, its spread, and where its effects stand. */
    record Drawn(double book, double sigma, int[] places) {}

    Draws(List<Drawn> tasks, History history, int draws) {
        minutes = new double[tasks.size()][draws];
        sums = new double[draws];
        Effects effects = history.effects();
        int[] known = tasks.stream()
                .flatMapToInt(t -> Arrays.stream(t.places()))
                .filter(place -> place >= 0)
                .distinct()
                .sorted()
                .toArray();
        RealMatrix lower = known.length == 0 ? null : lower(effects.covariance(), known);
        SplittableRandom random = new SplittableRandom(SEED);
        double rest = Math.sqrt(effects.rest());
        for (int d = 0; d < sums.length; d++) {
            double[] drawn = new double[effects.effects().length];
            if (lower != null) {
                double[] apart = lower.operate(normal(random, known.length));
                for (int i = 0; i < known.length; i++) {
                    drawn[known[i]] = effects.effects()[known[i]] + apart[i];
                }
            }
            double[] unmet = unmet(random, history);
            double job = unmet[History.JOB];
            for (int t = 0; t < tasks.size(); t++) {
                Drawn task = tasks.get(t);
                double log = job + random.nextGaussian() * task.sigma() * rest;
                for (int k = 0; k < task.places().length; k++) {
                    int place = task.places()[k];
                    log += place >= 0
                            ? drawn[place]
                            : k == History.TASK ? random.nextGaussian() * Math.sqrt(effects.variances()[k]) : unmet[k];
                }
                minutes[t][d] = task.book() * Math.exp(log);
                sums[d] += minutes[t][d];
            }
        }
    }

    /**
     * Effects of a make, a model, a person that the shop has not met, and of the job itself: one draw a job. How far such
     * effects spread is itself known from no more than those met, so each draw is of Student's distribution: wider the
     * fewer they are.
     */
    private static double[] unmet(SplittableRandom random, History history) {
        double[] variances = history.effects().variances();
        double[] drawn = normal(random, variances.length);
        for (int k = 0; k < drawn.length; k++) {
            drawn[k] *= Math.sqrt(variances[k] / share(random.nextGaussian(), history.freedom(k)));
        }
        return drawn;
    }

    /** A chi-square variable over its degrees of freedom, from a normal one (Wilson and Hilferty 1931). */
    static double share(double normal, double freedom) {
        double spread = 2 / (9 * freedom);
        return Math.pow(Math.max(1 - spread + normal * Math.sqrt(spread), 0.05), 3);
    }

    private static RealMatrix lower(RealMatrix covariance, int[] places) {
        RealMatrix part = covariance.getSubMatrix(places, places);
        RealMatrix jitter = MatrixUtils.createRealIdentityMatrix(places.length).scalarMultiply(1e-12);
        return new CholeskyDecomposition(part.add(jitter), 1e-6, 0).getL();
    }

    private static double[] normal(SplittableRandom random, int size) {
        double[] drawn = new double[size];
        for (int i = 0; i < size; i++) {
            drawn[i] = random.nextGaussian();
        }
        return drawn;
    }

    double sumAt(double share) {
        return quantile(sums, share);
    }

    double taskAt(int task, double share) {
        return quantile(minutes[task], share);
    }

    /** The part of the sum's variance that comes with a task. */
    double share(int task) {
        double meanTask = Arrays.stream(minutes[task]).average().orElse(0);
        double meanSum = Arrays.stream(sums).average().orElse(0);
        double together = 0;
        double alone = 0;
        for (int d = 0; d < sums.length; d++) {
            together += (minutes[task][d] - meanTask) * (sums[d] - meanSum);
            alone += (sums[d] - meanSum) * (sums[d] - meanSum);
        }
        return alone == 0 ? 0 : together / alone;
    }

    private static double quantile(double[] values, double share) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[(int) Math.min(sorted.length - 1L, Math.round(share * sorted.length))];
    }
}
