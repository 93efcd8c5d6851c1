package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Model;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Where a question stands once all answers are weighed.
 *
 * @param models the entries, in the order of the numbers
 * @param evidence by trait id
 * @param looks answers that weigh, by trait id in alphabetical order
 * @param asked ids of traits that were looked at, with or without an answer
 * @param pieces what each answer weighs
 * @param prior by entry, unlisted last
 * @param posterior by entry, unlisted last
 * @param exponent how far each look counts
 * @param except horn left out of what was learned
 */
record Standing(
        List<Model> models,
        Map<String, Evidence> evidence,
        Map<String, List<Seen>> looks,
        List<String> asked,
        List<Piece> pieces,
        double[] prior,
        double[] posterior,
        double exponent,
        @Nullable String except) {
    int unlisted() {
        return models.size();
    }

    List<Seen> looks(String trait) {
        return looks.getOrDefault(trait, List.of());
    }

    /** The entry that fits best, unlisted among them. */
    int best() {
        int best = unlisted();
        for (int e = 0; e < posterior.length; e++) {
            if (posterior[e] > posterior[best]) {
                best = e;
            }
        }
        return best;
    }
}
