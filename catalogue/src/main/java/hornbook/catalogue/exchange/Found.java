package hornbook.catalogue.exchange;

import hornbook.catalogue.entry.Entry;
import hornbook.shared.exchange.Refusal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the files gave so far: entries by id, refusals, and the order of each file. */
final class Found {
    private final Map<String, Entry> entries = new LinkedHashMap<>();
    private final List<Refusal> refused = new ArrayList<>();
    private final Map<String, List<String>> order = new LinkedHashMap<>();
    private int read;

    void read(int rows) {
        read += rows;
    }

    int read() {
        return read;
    }

    void refuse(Refusal refusal) {
        refused.add(refusal);
    }

    List<Refusal> refused() {
        return List.copyOf(refused);
    }

    /** An entry that a file gave, or gave more of. */
    void add(Entry entry, String file) {
        entries.put(entry.id(), entry);
        mention(entry.id(), file);
    }

    /** The file speaks of this entry, here in its order. */
    void mention(String id, String file) {
        List<String> ids = order.computeIfAbsent(file, f -> new ArrayList<>());
        if (!ids.contains(id)) {
            ids.add(id);
        }
    }

    <E extends Entry> Optional<E> entry(Class<E> type, String id) {
        return Optional.ofNullable(entries.get(id)).filter(type::isInstance).map(type::cast);
    }

    Collection<Entry> entries() {
        return entries.values();
    }

    Map<String, List<String>> order() {
        return order;
    }
}
