package hornbook.indexer.fit;

import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.Place;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What drawers and places are called. */
final class Places {
    private final Map<String, String> labels = new HashMap<>();
    private final Set<String> horns = new HashSet<>();

    Places(List<Drawer> drawers, List<Place> places) {
        drawers.forEach(drawer -> labels.put(drawer.id(), drawer.labelAsWritten()));
        for (Place place : places) {
            labels.put(place.id(), place.name());
            if (place.model() != null) {
                horns.add(place.id());
            }
        }
    }

    @Nullable
    String label(@Nullable String id) {
        String label = id == null ? null : labels.get(id);
        return label == null || label.isEmpty() ? null : label;
    }

    /** A horn kept for its parts: what lies there is still on it. */
    boolean partsHorn(String id) {
        return horns.contains(id);
    }
}
