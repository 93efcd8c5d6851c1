package hornbook.shared.exchange;

import hornbook.shared.shop.Kind;
import hornbook.shared.shop.ShopRecord;
import hornbook.shared.store.View;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The ids known so far, and which columns name one. */
final class References {
    /** Column to the kind it names; a column of that name means the same in every file. */
    private static final Map<String, String> NAMES = Map.of(
            "cabinet", "cabinet",
            "drawer", "drawer",
            "place", "place",
            "supplier", "supplier",
            "horn", "horn",
            "job", "job",
            "lot", "lot",
            "set", "tool",
            "movement", "movement");

    private final Map<String, Set<String>> known = new HashMap<>();

    private final Map<Class<?>, Set<String>> stood = new HashMap<>();

    References(View view) {
        for (Kind<? extends ShopRecord> kind : Kind.KEPT) {
            Set<String> ids = view.ids(kind.type());
            stood.put(kind.type(), ids);
            known.put(kind.name(), new HashSet<>(ids));
        }
    }

    /** Was there a record of that number before the import? */
    boolean stood(ShopRecord record) {
        return stood.getOrDefault(record.getClass(), Set.of()).contains(record.id());
    }

    boolean knows(String kind, String id) {
        return known.containsKey(kind) && ids(kind).contains(id);
    }

    void add(Kind<?> kind, String id) {
        ids(kind.name()).add(id);
    }

    /** A column that names something unknown, and why its row is refused. */
    record Broken(String column, String why) {}

    /** The first column of the row that names something unknown. */
    Optional<Broken> broken(Kind<?> kind, Map<String, String> cells) {
        for (String column : kind.columns().names()) {
            String cell = cells.getOrDefault(column, "");
            String named = names(kind, column);
            if (named != null && !cell.isEmpty() && !ids(named).contains(cell)) {
                return Optional.of(new Broken(
                        column,
                        "“" + cell + "” is no " + named
                                + " of this shop or of the import: add it or correct the number"));
            }
        }
        return Optional.empty();
    }

    /** A supplier's place is a town, not a place of the shop. */
    static @Nullable String names(Kind<?> kind, String column) {
        boolean town = kind.name().equals("supplier") && column.equals("place");
        return town ? null : NAMES.get(column);
    }

    private Set<String> ids(String kind) {
        return known.computeIfAbsent(kind, k -> new HashSet<>());
    }
}
