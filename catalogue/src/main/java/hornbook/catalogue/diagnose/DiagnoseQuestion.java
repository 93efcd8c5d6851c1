package hornbook.catalogue.diagnose;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A complaint, and what was looked at already.
 *
 * @param symptom in the player's words, or the id of a fault
 * @param answers by the id of a check: whether it says yes
 * @param passed ids of checks that cannot be made, or did not tell: they move no odds and are not offered again
 * @param model id of the horn's model, null where not known or not listed
 */
public record DiagnoseQuestion(
        String symptom,
        Map<String, Boolean> answers,
        Set<String> passed,
        @Nullable String model) {
    /** Keeps its own copy, in order. */
    public DiagnoseQuestion {
        answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
        passed = Set.copyOf(passed);
    }

    /** Nothing looked at yet. */
    public static DiagnoseQuestion of(String symptom) {
        return new DiagnoseQuestion(symptom, Map.of(), Set.of(), null);
    }
}
