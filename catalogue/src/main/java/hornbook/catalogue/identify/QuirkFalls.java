package hornbook.catalogue.identify;

import hornbook.catalogue.entry.CautionLevel;
import java.util.List;
import java.util.Objects;

/** What looks are expected to tell of open quirks, those that they turn on and those that follow from the entry. */
final class QuirkFalls {
    private final LookMatrix matrix;
    private final double[] sums;
    private final List<QuirkDoubt> open;
    private final double[][] with;

    QuirkFalls(LookMatrix matrix, Standing standing, double[] sums, List<QuirkDoubt> open) {
        this.matrix = matrix;
        this.sums = sums;
        this.open = open;
        this.with = new double[open.size()][];
        for (int q = 0; q < with.length; q++) {
            double[] weights = new double[sums.length == 0 ? 0 : standing.posterior().length];
            for (int e = 0; e < weights.length; e++) {
                weights[e] = standing.posterior()[e] * open.get(q).applies()[e];
            }
            with[q] = matrix.product(weights);
        }
    }

    /** Bits, weighed by how much is at stake: stop 1, care a half, note a fifth. */
    double bits(String trait, int firstQuestion, int afterLast) {
        double bits = 0;
        for (int q = 0; q < open.size(); q++) {
            QuirkDoubt quirk = open.get(q);
            Double turns = quirk.falls().get(trait);
            double fall = turns != null ? turns : byEntry(q, firstQuestion, afterLast);
            bits += weight(quirk.quirk().caution()) * fall;
        }
        return bits;
    }

    private double byEntry(int q, int from, int to) {
        double fall = 0;
        for (int question = from; question < to; question++) {
            fall += QuirkDoubt.fall(
                    matrix.answers(sums, question),
                    matrix.answers(with[q], question),
                    open.get(q).probability());
        }
        return Math.min(fall, Scales.entropy(open.get(q).probability()));
    }

    private static double weight(CautionLevel caution) {
        return switch (Objects.requireNonNull(caution)) {
            case STOP -> 1;
            case CARE -> 0.5;
            case NOTE -> 0.2;
        };
    }
}
