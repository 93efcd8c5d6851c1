package hornbook.viewer.bench;

import hornbook.catalogue.entry.Trait;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The look that is asked for now.
 *
 * @param trait null where nothing is left to look at
 * @param several whether values are marked one after the other before they are taken together
 * @param marked values marked so far: true for there, or for perhaps this one; false for not there
 */
record Asking(@Nullable Trait trait, boolean several, Map<String, Boolean> marked) {
    static final Asking NOTHING = new Asking(null, false, Map.of());

    Asking {
        marked = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(marked));
    }

    static Asking of(@Nullable Trait trait) {
        boolean many = trait != null && trait.kind() == hornbook.catalogue.entry.TraitKind.MANY;
        return new Asking(trait, many, Map.of());
    }

    Asking several(boolean now) {
        return new Asking(trait, now, Map.of());
    }

    /** Marks a value further: not named, there, and where a trait has many, not there. */
    Asking marking(String value, boolean many) {
        Map<String, Boolean> now = new LinkedHashMap<>(marked);
        Boolean before = now.get(value);
        if (before == null) {
            now.put(value, true);
        } else if (before && many) {
            now.put(value, false);
        } else {
            now.remove(value);
        }
        return new Asking(trait, several, now);
    }
}
