package hornbook.catalogue.may;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A thing, and what it would be used on.
 *
 * @param thing id or name of a supply, tool or operation, or a {@code process-} word
 * @param on value by trait id: one value, several with a bar between where it may be either, or {@code unknown}
 */
public record MayQuestion(String thing, Map<String, String> on) {
    /** Keeps its own copy, in order. */
    public MayQuestion {
        on = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(on));
    }

    /** Of one trait. */
    public static MayQuestion of(String thing, String trait, String value) {
        return new MayQuestion(thing, Map.of(trait, value));
    }
}
