package hornbook.shared.exchange;

import hornbook.shared.shop.Kind;
import hornbook.shared.shop.ShopRecord;
import hornbook.shared.store.View;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What is out of use and still named: the lot of an old ledger line, the supplier of a lot. An export has to carry it, or
 * what names it could not come back in; the file {@code out_of_use.csv} says which records those are.
 *
 * @param ids numbers by the name of their kind
 */
record OutOfUse(Map<String, Set<String>> ids) {
    static final String FILE = "out_of_use.csv";
    static final List<String> COLUMNS = List.of("kind", "id");
    private static final OutOfUse NOTHING = new OutOfUse(Map.of());

    /** All that records in use name, or what those name. */
    static OutOfUse named(View view) {
        Map<String, Set<String>> gone = new HashMap<>();
        for (Kind<?> kind : Kind.KEPT) {
            Set<String> ids = view.retiredIds(kind.type());
            if (!ids.isEmpty()) {
                gone.put(kind.name(), ids);
            }
        }
        if (gone.isEmpty()) {
            return NOTHING;
        }
        OutOfUse named = new OutOfUse(new HashMap<>());
        // From the last kind back: a kind names only those before it.
        for (Kind<?> kind : Kind.KEPT.reversed()) {
            named.look(view, kind, gone);
        }
        return named;
    }

    private <T extends ShopRecord> void look(View view, Kind<T> kind, Map<String, Set<String>> gone) {
        Map<Integer, String> naming = new HashMap<>();
        List<String> columns = kind.columns().names();
        for (int i = 0; i < columns.size(); i++) {
            String target = References.names(kind, columns.get(i));
            if (target != null && gone.containsKey(target)) {
                naming.put(i, target);
            }
        }
        if (!naming.isEmpty()) {
            view.each(kind.type(), record -> note(kind.columns().cells(record), naming, gone));
            of(view, kind).forEach(record -> note(kind.columns().cells(record), naming, gone));
        }
    }

    private void note(List<String> cells, Map<Integer, String> naming, Map<String, Set<String>> gone) {
        naming.forEach((column, target) -> {
            if (gone.getOrDefault(target, Set.of()).contains(cells.get(column))) {
                ids.computeIfAbsent(target, kind -> new LinkedHashSet<>()).add(cells.get(column));
            }
        });
    }

    /** The records of a kind, in the order of their numbers. */
    <T extends ShopRecord> List<T> of(View view, Kind<T> kind) {
        return ids.getOrDefault(kind.name(), Set.of()).stream()
                .sorted()
                .flatMap(id -> view.evenRetired(kind.type(), id).stream())
                .toList();
    }

    /** Writes which they are; nothing where there are none. */
    boolean write(Path folder) throws IOException {
        List<List<String>> rows = new ArrayList<>();
        for (Kind<?> kind : Kind.KEPT) {
            ids.getOrDefault(kind.name(), Set.of()).stream().sorted().forEach(id -> rows.add(List.of(kind.name(), id)));
        }
        if (!rows.isEmpty()) {
            CsvFile.write(folder.resolve(FILE), COLUMNS, rows);
        }
        return !rows.isEmpty();
    }
}
