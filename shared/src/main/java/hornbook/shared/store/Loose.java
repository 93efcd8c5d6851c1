package hornbook.shared.store;

import hornbook.shared.shop.BadInput;
import hornbook.shared.store.References.Reference;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What one deed made live or retired; at its end nothing live may name anything retired. */
final class Loose {
    private record Named(String table, String id, String by) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Named(String t, String i, String _) && t.equals(table) && i.equals(id);
        }

        @Override
        public int hashCode() {
            return 31 * table.hashCode() + id.hashCode();
        }
    }

    private record Retired(String table, String id) {}

    private final Query query;
    private final References references;
    private final Set<Named> named = new LinkedHashSet<>();
    private final Set<Retired> retired = new LinkedHashSet<>();

    Loose(Query query, References references) {
        this.query = query;
        this.references = references;
    }

    void stored(Table<?> table, String id, List<String> cells, boolean isRetired) {
        String from = table.kind().table();
        if (isRetired) {
            retired.add(new Retired(from, id));
            return;
        }
        List<String> names = table.kind().columns().names();
        for (Reference reference : references.named(from)) {
            String cell = cells.get(names.indexOf(reference.column()));
            if (reference.bars() && !cell.isEmpty()) {
                named.add(new Named(reference.target(), cell, table.kind().name() + " " + id));
            }
        }
    }

    void refuse() {
        for (Named name : named) {
            if (query.number("select count(*) from \"" + name.table + "\" where id = ? and retired = 1", name.id) > 0) {
                throw new BadInput(name.by + ": " + name.table.replace('_', ' ') + " " + name.id
                        + " is retired: name another, or bring it back first");
            }
        }
        retired.forEach(this::refuse);
    }

    private void refuse(Retired gone) {
        if (query.number("select count(*) from \"" + gone.table + "\" where id = ? and retired = 1", gone.id) == 0) {
            return;
        }
        for (Reference reference : references.naming(gone.table)) {
            if (reference.bars()) {
                query.first(
                                "select id from \"" + reference.table() + "\" where \"" + reference.column()
                                        + "\" = ? and retired = 0 limit 1",
                                r -> r.getString(1),
                                gone.id)
                        .ifPresent(id -> {
                            throw new BadInput(gone.table.replace('_', ' ') + " " + gone.id + ": "
                                    + reference.table().replace('_', ' ') + " " + id
                                    + " still names it: move or retire that first");
                        });
            }
        }
    }
}
