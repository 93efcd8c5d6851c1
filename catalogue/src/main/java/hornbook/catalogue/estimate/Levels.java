package hornbook.catalogue.estimate;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The levels of one factor, numbered as they come. */
final class Levels {
    private final Map<String, Integer> numbers = new LinkedHashMap<>();

    int add(@Nullable String name) {
        return name == null ? -1 : numbers.computeIfAbsent(name, n -> numbers.size());
    }

    /** The number of a level, -1 where the shop has not met it. */
    int of(@Nullable String name) {
        return name == null ? -1 : numbers.getOrDefault(name, -1);
    }

    int size() {
        return numbers.size();
    }
}
