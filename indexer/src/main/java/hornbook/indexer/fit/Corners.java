package hornbook.indexer.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The corners between which sizes stay: what is straight in each size and breaks at all of them breaks within. */
final class Corners {
    private final List<Map<String, Value>> all = new ArrayList<>();

    /** @param values what else has been changed */
    Corners(Map<String, Value> values) {
        all.add(values);
    }

    /** The size stays between these, mm. */
    void between(String dimension, double low, double high) {
        List<Map<String, Value>> further = new ArrayList<>();
        for (Map<String, Value> corner : all) {
            further.add(with(corner, dimension, low));
            further.add(with(corner, dimension, high));
        }
        all.clear();
        all.addAll(further);
    }

    List<Map<String, Value>> all() {
        return List.copyOf(all);
    }

    private static Map<String, Value> with(Map<String, Value> corner, String dimension, double mm) {
        Map<String, Value> more = new HashMap<>(corner);
        more.put(dimension, Value.of(mm));
        return more;
    }
}
