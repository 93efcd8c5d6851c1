package hornbook.shared.store;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which column of which table names a record of another, as the schema says. */
record References(Map<String, List<Reference>> from, Map<String, List<Reference>> to) {
    /** History keeps the names of what is gone: a used-up lot or a seller given up can be retired all the same. */
    private static final List<String> HISTORY = List.of("movement", "part_used", "pad_used");

    /** A column that names a record of another table. */
    record Reference(String table, String column, String target) {
        boolean bars() {
            return !target.equals("supplier") && !HISTORY.contains(table) || target.equals("movement");
        }
    }

    static References of(Query query) {
        Map<String, List<Reference>> from = new HashMap<>();
        Map<String, List<Reference>> to = new HashMap<>();
        List<Reference> all = query.rows(
                "select m.name, f.\"from\", f.\"table\" from sqlite_schema m, pragma_foreign_key_list(m.name) f "
                        + "where m.type = 'table' and m.name not in ('feed', 'deed', 'balance')",
                r -> new Reference(r.getString(1), r.getString(2), r.getString(3)));
        for (Reference reference : all) {
            from.computeIfAbsent(reference.table(), k -> new ArrayList<>()).add(reference);
            to.computeIfAbsent(reference.target(), k -> new ArrayList<>()).add(reference);
        }
        return new References(from, to);
    }

    List<Reference> named(String table) {
        return from.getOrDefault(table, List.of());
    }

    List<Reference> naming(String table) {
        return to.getOrDefault(table, List.of());
    }
}
