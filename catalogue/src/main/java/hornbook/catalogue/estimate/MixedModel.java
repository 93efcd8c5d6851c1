package hornbook.catalogue.estimate;

import java.util.List;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * A value as the sum of one effect a factor and a rest, each effect drawn about 0: the mixed model equations (Henderson
 * 1950, as in Searle, Casella and McCulloch, Variance Components, 1992). The last factor, of which each observation has
 * exactly one level, is eliminated first, as it has the most levels.
 */
final class MixedModel {
    /** Observations that agree to the last digit leave no rest, and nothing to divide by. */
    private static final double LEAST_REST = 1e-4;

    private final int[] sizes;
    private final int[] starts;
    private final int others;
    private final double[][] crossed;
    private final double[][] toLast;
    private final double[] last;
    private final double[] sums;
    private final double[] lastSums;
    private final double squares;
    private final int observations;

    MixedModel(int[] sizes, List<Observation> all) {
        this.sizes = sizes.clone();
        this.starts = new int[sizes.length];
        for (int k = 1; k < sizes.length; k++) {
            starts[k] = starts[k - 1] + sizes[k - 1];
        }
        this.others = starts[sizes.length - 1];
        int lastSize = sizes[sizes.length - 1];
        this.crossed = new double[others][others];
        this.toLast = new double[lastSize][others];
        this.last = new double[lastSize];
        this.sums = new double[others];
        this.lastSums = new double[lastSize];
        double total = 0;
        for (Observation o : all) {
            add(o);
            total += o.weight() * o.value() * o.value();
        }
        this.squares = total;
        this.observations = all.size();
    }

    private void add(Observation o) {
        int end = sizes.length - 1;
        int l = o.levels()[end];
        last[l] += o.weight();
        lastSums[l] += o.weight() * o.value();
        for (int a = 0; a < end; a++) {
            int i = index(o, a);
            if (i < 0) {
                continue;
            }
            sums[i] += o.weight() * o.value();
            toLast[l][i] += o.weight();
            for (int b = 0; b < end; b++) {
                int j = index(o, b);
                if (j >= 0) {
                    crossed[i][j] += o.weight();
                }
            }
        }
    }

    private int index(Observation o, int factor) {
        int level = o.levels()[factor];
        return level < 0 ? -1 : starts[factor] + level;
    }

    /** Effects and their doubt for given variances, of each factor and of the rest. */
    Effects solve(double[] variances, double rest) {
        double[][] left = new double[others][];
        double[] right = sums.clone();
        for (int i = 0; i < others; i++) {
            left[i] = crossed[i].clone();
        }
        for (int k = 0; k < sizes.length - 1; k++) {
            for (int i = starts[k]; i < starts[k] + sizes[k]; i++) {
                left[i][i] += rest / variances[k];
            }
        }
        double shrink = rest / variances[sizes.length - 1];
        for (int l = 0; l < last.length; l++) {
            eliminate(left, right, l, last[l] + shrink);
        }
        RealMatrix inverse = inverse(left);
        double[] effects = others == 0 ? right : inverse.operate(right);
        double[] lasts = new double[last.length];
        for (int l = 0; l < last.length; l++) {
            lasts[l] = (lastSums[l] - dot(toLast[l], effects)) / (last[l] + shrink);
        }
        return new Effects(variances, rest, effects, lasts, inverse.scalarMultiply(rest));
    }

    /** Of nothing it is a matrix that nobody asks. */
    private RealMatrix inverse(double[][] left) {
        return others == 0
                ? MatrixUtils.createRealMatrix(1, 1)
                : new CholeskyDecomposition(MatrixUtils.createRealMatrix(left), 1e-8, 1e-12)
                        .getSolver()
                        .getInverse();
    }

    private void eliminate(double[][] left, double[] right, int l, double pivot) {
        double[] row = toLast[l];
        for (int i = 0; i < others; i++) {
            if (row[i] == 0) {
                continue;
            }
            double share = row[i] / pivot;
            right[i] -= share * lastSums[l];
            for (int j = 0; j < others; j++) {
                left[i][j] -= share * row[j];
            }
        }
    }

    /**
     * What is thought of the variances beforehand: with few levels the observations alone would often make one nought.
     *
     * @param variances of each factor
     * @param worth for so many levels they count; 0 for nothing
     */
    record Prior(double[] variances, double worth) {}

    /**
     * The variances under which the observations are most likely (expectation and maximisation), drawn towards what is
     * thought beforehand, never below 0.
     */
    Effects fit(double[] start, double startRest, int steps, Prior prior) {
        double[] variances = start.clone();
        double rest = startRest;
        for (int step = 0; step < steps; step++) {
            Effects now = solve(variances, rest);
            double[] next = new double[variances.length];
            double moved = 0;
            for (int k = 0; k < variances.length; k++) {
                double told = prior.worth() * prior.variances()[k];
                next[k] = Math.max((squares(now, k) + told) / Math.max(sizes[k] + prior.worth(), 1), 1e-9);
                moved = Math.max(moved, Math.abs(next[k] - variances[k]) / (variances[k] + 1e-4));
            }
            rest = Math.max(
                    (squares - dot(sums, now.effects()) - dot(lastSums, now.lastEffects())) / observations,
                    LEAST_REST * squares / observations);
            variances = next;
            if (moved < 1e-3) {
                break;
            }
        }
        return solve(variances, rest);
    }

    /** Sum of squares of a factor's effects, their doubt counted in. */
    private double squares(Effects now, int factor) {
        double sum = 0;
        if (factor == sizes.length - 1) {
            double shrink = now.rest() / now.variances()[factor];
            for (int l = 0; l < last.length; l++) {
                double pivot = last[l] + shrink;
                double through = dot(toLast[l], now.covariance().operate(toLast[l])) / (pivot * pivot);
                sum += now.lastEffects()[l] * now.lastEffects()[l] + now.rest() / pivot + through;
            }
        } else {
            for (int i = starts[factor]; i < starts[factor] + sizes[factor]; i++) {
                sum += now.effects()[i] * now.effects()[i] + now.covariance().getEntry(i, i);
            }
        }
        return sum;
    }

    /** Where a level's effect stands, for any factor but the last. */
    int place(int factor, int level) {
        return starts[factor] + level;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
