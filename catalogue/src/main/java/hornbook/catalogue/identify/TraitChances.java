package hornbook.catalogue.identify;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the horn's traits are likely to be, over all entries. */
final class TraitChances {
    private static final double LEAST = 1e-7;

    private final Standing standing;

    TraitChances(Standing standing) {
        this.standing = standing;
    }

    Map<String, Double> of(String trait) {
        Map<String, Double> chances = new LinkedHashMap<>();
        if (standing.evidence().get(trait) instanceof ChoiceEvidence choice) {
            List<String> values = choice.values();
            for (int e = 0; e < standing.posterior().length; e++) {
                if (standing.posterior()[e] > LEAST) {
                    add(choice, e, values, chances);
                }
            }
        }
        return chances;
    }

    private void add(ChoiceEvidence choice, int entry, List<String> values, Map<String, Double> into) {
        double[] truth = choice.weighed(entry, standing.looks(choice.trait().id()), standing.except());
        double sum = Arrays.stream(truth).sum();
        for (int v = 0; v < truth.length; v++) {
            into.merge(values.get(v), standing.posterior()[entry] * truth[v] / sum, Double::sum);
        }
    }
}
