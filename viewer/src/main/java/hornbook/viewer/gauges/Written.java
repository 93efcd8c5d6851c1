package hornbook.viewer.gauges;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The fields of a pane as they stand, each as typed.
 *
 * @param <F> which fields the pane has
 * @param texts of the fields in which something stands
 */
record Written<F extends Enum<F>>(Map<F, String> texts) {
    /** Keeps its own copy. */
    Written {
        texts = Map.copyOf(texts);
    }

    static <F extends Enum<F>> Written<F> nothing() {
        return new Written<F>(Map.of());
    }

    /** As typed; blank where nothing was. */
    String at(F field) {
        return texts.getOrDefault(field, "");
    }

    /** Empty where nothing was typed. */
    Optional<String> told(F field) {
        return Optional.of(at(field).strip()).filter(text -> !text.isEmpty());
    }

    Written<F> with(F field, String text) {
        Map<F, String> now = new HashMap<>(texts);
        now.put(field, text);
        now.values().removeIf(String::isEmpty);
        return new Written<>(now);
    }
}
