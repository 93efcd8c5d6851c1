package hornbook.catalogue.identify;

import java.util.LinkedHashMap;
import java.util.Map;

/** What a look at each trait that a quirk turns on is expected to tell about it. */
final class QuirkLook {
    private final Applies condition;
    private final Standing standing;
    private final double[][][] cells;

    /** @param cells by entry the chances of every variable's cases; nothing for entries too unlikely to count */
    QuirkLook(Applies condition, Standing standing, double[][][] cells) {
        this.condition = condition;
        this.standing = standing;
        this.cells = cells;
    }

    /** Bits by trait, at most the doubt there is; traits already looked at are not among them. */
    Map<String, Double> falls(double probability) {
        Map<String, Double> falls = new LinkedHashMap<>();
        for (int v = 0; v < condition.variables().size(); v++) {
            String trait = condition.variables().get(v).trait();
            if (!standing.asked().contains(trait)) {
                falls.merge(trait, fall(v, probability), Double::sum);
            }
        }
        double all = Scales.entropy(probability);
        falls.replaceAll((_, fall) -> Math.min(all, fall));
        return falls;
    }

    private double fall(int held, double probability) {
        Variable variable = condition.variables().get(held);
        double[] answer = new double[0];
        double[] both = new double[0];
        for (int e = 0; e < cells.length; e++) {
            if (standing.posterior()[e] > QuirkDoubt.LEAST) {
                double[] given = condition.given(standing, e, cells[e], held);
                double[][] joint = variable.joint(e, standing.looks(variable.trait()), standing.except());
                if (answer.length == 0) {
                    answer = new double[joint.length];
                    both = new double[joint.length];
                }
                add(standing.posterior()[e], joint, given, answer, both);
            }
        }
        return QuirkDoubt.fall(answer, both, probability);
    }

    private static void add(double weight, double[][] joint, double[] given, double[] answer, double[] both) {
        for (int o = 0; o < joint.length; o++) {
            for (int c = 0; c < given.length; c++) {
                answer[o] += weight * joint[o][c];
                both[o] += weight * joint[o][c] * given[c];
            }
        }
    }
}
