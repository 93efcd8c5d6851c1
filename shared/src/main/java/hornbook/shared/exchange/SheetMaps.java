package hornbook.shared.exchange;

import hornbook.shared.store.Writing;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import tools.jackson.core.JacksonException;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** What a person told of their columns, kept with the shop: the next list of that kind is headed the same. */
final class SheetMaps {
    private static final JsonMapper JSON = new JsonMapper();

    private SheetMaps() {}

    private static String setting(SheetKind kind) {
        return "columns_of_" + kind.word();
    }

    /** What was told before of columns that this sheet has, and what is told now, which comes first. */
    static Map<String, String> with(Optional<String> kept, List<String> columns, Map<String, String> told) {
        Map<String, String> all = new HashMap<>();
        kept.map(SheetMaps::read).orElse(Map.of()).forEach((column, field) -> {
            if (columns.contains(column)
                    && !told.containsKey(column)
                    && (field.isEmpty() || !told.containsValue(field))) {
                all.put(column, field);
            }
        });
        all.putAll(told);
        return all;
    }

    static Optional<String> kept(hornbook.shared.store.Books books, SheetKind kind) {
        return books.setting(setting(kind));
    }

    /** Keeps what was told, beside what was told of other columns. */
    static void keep(Writing writing, SheetKind kind, Optional<String> kept, Map<String, String> told) {
        Map<String, String> all = new TreeMap<>(kept.map(SheetMaps::read).orElse(Map.of()));
        all.putAll(told);
        String json = JSON.writeValueAsString(all);
        if (!told.isEmpty() && !json.equals(kept.orElse(""))) {
            writing.setting(setting(kind), json);
        }
    }

    private static Map<String, String> read(String json) {
        try {
            return JSON.readValue(json, new TypeReference<Map<String, String>>() {});
        } catch (JacksonException e) {
            return Map.of();
        }
    }
}
