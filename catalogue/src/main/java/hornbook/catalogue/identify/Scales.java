package hornbook.catalogue.identify;

import java.util.List;

/** Logarithms of weights into probabilities. */
final class Scales {
    private Scales() {}

    /** Prior times all pieces, made to add up to 1. */
    static double[] posterior(double[] prior, List<Piece> pieces) {
        double[] logs = new double[prior.length];
        for (int e = 0; e < logs.length; e++) {
            logs[e] = Math.log(prior[e]);
            for (Piece piece : pieces) {
                logs[e] += piece.logs()[e];
            }
        }
        return normal(logs);
    }

    /** Probabilities from logarithms known but for a common addend. */
    static double[] normal(double[] logs) {
        double most = Double.NEGATIVE_INFINITY;
        for (double log : logs) {
            most = Math.max(most, log);
        }
        double[] weights = new double[logs.length];
        double sum = 0;
        for (int e = 0; e < logs.length; e++) {
            weights[e] = Math.exp(logs[e] - most);
            sum += weights[e];
        }
        for (int e = 0; e < logs.length; e++) {
            weights[e] /= sum;
        }
        return weights;
    }

    /** Bits of doubt in a distribution (Shannon 1948). */
    static double entropy(double[] chances) {
        double bits = 0;
        for (double p : chances) {
            bits += term(p);
        }
        return bits;
    }

    /** Bits of doubt about something of that chance. */
    static double entropy(double chance) {
        return term(chance) + term(1 - chance);
    }

    private static double term(double p) {
        return p > 0 ? -p * Math.log(p) / Math.log(2) : 0;
    }
}
