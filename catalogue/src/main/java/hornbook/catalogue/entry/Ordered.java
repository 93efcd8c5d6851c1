package hornbook.catalogue.entry;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Unmodifiable copies that keep the order of what they copy. */
final class Ordered {
    private Ordered() {}

    static <K, V> Map<K, V> copy(Map<K, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
