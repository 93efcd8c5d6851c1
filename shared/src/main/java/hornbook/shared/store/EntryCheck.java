package hornbook.shared.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** Own entry files against what the books have of them. To edit one by hand is allowed; to tear one is not. */
final class EntryCheck {
    private static final JsonMapper JSON = new JsonMapper();
    private static final String ACCEPT = "run “hornbook check --repair” to take it as it is";
    private static final String PUT_BACK = "run “hornbook check --repair” to put back what the books have";

    private final TreeMap<String, Optional<String>> kept = new TreeMap<>();
    private final EntryFiles files;

    EntryCheck(Query query, Path folder) {
        this.files = new EntryFiles(folder.resolve(Opening.ENTRIES));
        query.each(
                "select path, content from entry", r -> kept.put(r.getString(1), Optional.ofNullable(r.getString(2))));
        // Promised by a deed and put in place at the next opening: not yet on the disk, and nobody's fault.
        query.each("select path from entry_pending", r -> kept.remove(r.getString(1)));
    }

    /** What became of an entry file. */
    enum Fate {
        BY_HAND,
        TORN
    }

    /** The files that differ from what the books have. */
    TreeMap<String, Fate> differ() {
        TreeMap<String, Fate> fates = new TreeMap<>();
        TreeSet<String> paths = files.paths();
        paths.addAll(kept.keySet());
        for (String path : paths) {
            Optional<String> now = Optional.ofNullable(files.read(path));
            Optional<String> then = kept.getOrDefault(path, Optional.empty());
            if (!now.equals(then)) {
                boolean sound = now.map(EntryCheck::sound).orElse(false);
                fates.put(path, sound ? Fate.BY_HAND : Fate.TORN);
            }
        }
        return fates;
    }

    private static boolean sound(String text) {
        try {
            return JSON.readTree(text).isObject();
        } catch (JacksonException e) {
            return false;
        }
    }

    Optional<String> kept(String path) {
        return kept.getOrDefault(path, Optional.empty());
    }

    List<Problem> problems() {
        List<Problem> found = new ArrayList<>();
        differ().forEach((path, fate) -> found.add(
                fate == Fate.BY_HAND
                        ? new Problem("changed by hand", "entries/" + path, ACCEPT)
                        : kept(path).isPresent()
                                ? new Problem("missing or torn", "entries/" + path, PUT_BACK)
                                : new Problem("is no entry", "entries/" + path, "correct it, or take it away")));
        return found;
    }
}
