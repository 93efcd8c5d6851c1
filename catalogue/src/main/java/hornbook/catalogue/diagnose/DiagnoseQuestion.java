package hornbook.catalogue.diagnose;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A complaint, and what was looked at already.
 *
 * @param symptom in the player's words, or the id of a fault
 * @param answers by the id of a check: whether it says yes
 * @param model id of the horn's model, null where not known or not listed
 */
public record DiagnoseQuestion(
        String symptom,
        Map<String, Boolean> answers,
        @Nullable String model) {
    /** Keeps its own copy, in order. */
    public DiagnoseQuestion {
        answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
    }

    /** Nothing looked at yet. */
    public static DiagnoseQuestion of(String symptom) {
        return new DiagnoseQuestion(symptom, Map.of(), null);
    }
}
