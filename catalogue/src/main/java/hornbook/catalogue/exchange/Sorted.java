package hornbook.catalogue.exchange;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Entries in the order in which a file had them; those it did not have come after, as they stand. */
final class Sorted {
    private final Map<String, Map<String, Integer>> places = new HashMap<>();

    Sorted(Map<String, List<String>> order) {
        order.forEach((file, ids) -> {
            Map<String, Integer> place = new HashMap<>();
            ids.forEach(id -> place.putIfAbsent(id, place.size()));
            places.put(file, place);
        });
    }

    <E extends Entry> Stream<E> own(Catalogue catalogue, Collection<E> entries, String file) {
        return by(entries.stream().filter(e -> catalogue.isOwn(e.id())).toList(), file);
    }

    <E extends Entry> Stream<E> by(List<E> entries, String file) {
        Map<String, Integer> place = places.getOrDefault(file, Map.of());
        return entries.stream().sorted(Comparator.comparingInt(e -> place.getOrDefault(e.id(), Integer.MAX_VALUE)));
    }
}
