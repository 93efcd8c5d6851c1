package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Quirk;
import java.util.Map;

/**
 * A quirk as it stands: how likely it applies, by entry and in all, and what looks would tell of it.
 *
 * @param applies chance by entry, unlisted last
 * @param probability in all
 * @param falls bits of doubt about it that a look at each trait it turns on is expected to take
 */
record QuirkDoubt(Quirk quirk, double[] applies, double probability, Map<String, Double> falls) {
    /** Entries less likely do not count. */
    static final double LEAST = 1e-6;

    private static final double OPEN_FROM = 0.05;
    /** A quirk that an entry names as met on it, where it says nothing of what the quirk turns on. */
    private static final double KNOWN = 0.95;

    static QuirkDoubt of(Quirk quirk, Applies condition, Standing standing) {
        double[] posterior = standing.posterior();
        double[] applies = new double[posterior.length];
        double[][][] cells = new double[posterior.length][0][];
        double probability = 0;
        for (int e = 0; e < posterior.length; e++) {
            if (posterior[e] > LEAST) {
                cells[e] = condition.cells(standing, e);
                double chance = condition.chance(standing, e, cells[e]);
                applies[e] = knownOf(quirk, condition, standing, e) ? Math.max(KNOWN, chance) : chance;
                probability += posterior[e] * applies[e];
            }
        }
        double sure = Math.clamp(probability, 0, 1);
        Map<String, Double> falls = open(sure) ? new QuirkLook(condition, standing, cells).falls(sure) : Map.of();
        return new QuirkDoubt(quirk, applies, sure, falls);
    }

    /** Met on horns of the entry before, and neither the entry nor an answer says more of what it turns on. */
    private static boolean knownOf(Quirk quirk, Applies condition, Standing standing, int entry) {
        if (entry == standing.unlisted()) {
            return false;
        }
        Model model = standing.models().get(entry);
        return model.quirksKnown().contains(quirk.id())
                && condition.variables().stream()
                        .map(Variable::trait)
                        .noneMatch(t -> model.traits().containsKey(t)
                                || model.traitsMany().containsKey(t)
                                || !standing.looks(t).isEmpty());
    }

    private static boolean open(double probability) {
        return probability > OPEN_FROM && probability < 1 - OPEN_FROM;
    }

    /** Is it worth settling? */
    boolean open() {
        return open(probability);
    }

    /** Expected fall of doubt, from the chances of the answers, alone and with the quirk. */
    static double fall(double[] answer, double[] both, double probability) {
        double left = 0;
        for (int o = 0; o < answer.length; o++) {
            if (answer[o] > 0) {
                left += answer[o] * Scales.entropy(Math.clamp(both[o] / answer[o], 0, 1));
            }
        }
        return Math.max(0, Scales.entropy(probability) - left);
    }
}
