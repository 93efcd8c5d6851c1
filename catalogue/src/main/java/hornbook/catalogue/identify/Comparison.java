package hornbook.catalogue.identify;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How candidates differ.
 *
 * @param differ where they do, what parts them best first
 * @param look the look that parts them for least trouble; missing where none does
 * @param odd ids of traits of this horn that fit none of them
 */
public record Comparison(List<Difference> differ, @Nullable String look, List<String> odd) {
    /** Keeps its own copies. */
    public Comparison {
        differ = List.copyOf(differ);
        odd = List.copyOf(odd);
    }

    /**
     * A trait in which they differ.
     *
     * @param values by candidate id what is stated, in words; no key where it is silent
     * @param bits what a look would tell between them, were all alike likely
     */
    public record Difference(String trait, Map<String, String> values, double bits) {
        /** Keeps its own copy. */
        public Difference {
            values = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(values));
        }
    }
}
