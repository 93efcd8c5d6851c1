package hornbook.shared.store;

import hornbook.shared.shop.Column;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Kind;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.ShopRecord;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The SQL of one kind of record, made once from its columns. */
record Table<T extends ShopRecord>(
        Kind<T> kind, String selectAll, String selectOne, String selectStored, String put, List<String> names) {
    private static final Map<Class<?>, Table<?>> ALL =
            Kind.KEPT.stream().map(Table::of).collect(Collectors.toMap(t -> t.kind.type(), Function.identity()));

    @SuppressWarnings("unchecked")
    static <T extends ShopRecord> Table<T> of(Class<T> type) {
        Table<?> table = ALL.get(type);
        if (table == null) {
            throw new IllegalArgumentException(type + " is no kind of record");
        }
        return (Table<T>) table;
    }

    private static <T extends ShopRecord> Table<T> of(Kind<T> kind) {
        String table = "\"" + kind.table() + "\"";
        List<Column> columns = kind.columns().list();
        String read = columns.stream().map(c -> read(kind, c)).collect(Collectors.joining(", "));
        String order = " order by " + table + ".rowid";
        String live = "select " + read + " from " + table + " where retired = 0";
        List<String> names =
                new ArrayList<>(columns.stream().map(c -> quoted(kind, c)).toList());
        String stored = "select " + String.join(", ", names) + ", retired, sum from " + table + " where id = ?";
        if (!names.contains("\"id\"")) {
            names.add("\"id\"");
        }
        names.add("retired");
        names.add("sum");
        return new Table<>(kind, live + order, live + " and id = ?" + order, stored, put(kind, table, names), names);
    }

    private static String put(Kind<?> kind, String table, List<String> names) {
        String marks = String.join(", ", Collections.nCopies(names.size(), "?"));
        String insert = "insert into " + table + " (" + String.join(", ", names) + ") values (" + marks + ")";
        if (kind.type() == Movement.class) {
            return insert;
        }
        String updates = names.stream().map(n -> n + " = excluded." + n).collect(Collectors.joining(", "));
        return insert + " on conflict (id) do update set " + updates;
    }

    String selectWhere(String column) {
        return selectAll.replace(" order by ", " and " + column(column) + " = ? order by ");
    }

    /** As {@link #selectOne}, and also what was retired; a lot's number is the ledger's here too. */
    String selectEvenRetired() {
        return selectOne.replace("where retired = 0 and ", "where ");
    }

    String selectRetired(String column) {
        return selectWhere(column).replace("where retired = 0", "where retired = 1");
    }

    /** Fills the marks of {@link #put()} from the cells of a record. */
    void bind(PreparedStatement statement, String id, List<String> cells, boolean retired, long sum)
            throws SQLException {
        int mark = 1;
        for (Column column : columns()) {
            bind(statement, mark++, column, cells.get(mark - 2));
        }
        if (mark < names.size() - 1) {
            statement.setString(mark++, id);
        }
        statement.setInt(mark++, retired ? 1 : 0);
        statement.setLong(mark, sum);
    }

    /** The cells as the table keeps them: a lot's number is the ledger's and not its own. */
    List<String> kept(List<String> cells) {
        if (kind.type() != Lot.class) {
            return cells;
        }
        List<String> kept = new ArrayList<>(cells);
        int count = kind.columns().names().indexOf("count");
        kept.set(count, rough(cells.get(count)) ? cells.get(count) : "");
        return kept;
    }

    /** A row's cells and whether it is retired as one text, which {@link Sums#row} sums. */
    String joined() {
        return columns().stream()
                        .map(c -> "coalesce(" + quoted(kind, c) + ", '') || char(31) || ")
                        .collect(Collectors.joining())
                + "retired";
    }

    private static boolean rough(String cell) {
        return Count.read(cell).filter(Count.Rough.class::isInstance).isPresent();
    }

    private void bind(PreparedStatement statement, int mark, Column column, String cell) throws SQLException {
        if (counts(kind, column)) {
            // A number is the ledger's to say; only words are kept with the lot.
            statement.setString(mark, rough(cell) ? cell : null);
        } else if (cell.isEmpty() && column.optional()) {
            statement.setNull(mark, Types.NULL);
        } else if (column.whole()) {
            statement.setInt(mark, Integer.parseInt(cell));
        } else {
            statement.setString(mark, cell);
        }
    }

    T record(ResultSet row) throws SQLException {
        return kind.columns().record(cells(row));
    }

    List<String> cells(ResultSet row) throws SQLException {
        List<String> cells = new ArrayList<>(columns().size());
        for (int i = 1; i <= columns().size(); i++) {
            String cell = row.getString(i);
            cells.add(cell == null ? "" : cell);
        }
        return cells;
    }

    /** A column's name as SQL, checked against the record so that nothing else gets into a query. */
    String column(String name) {
        return columns().stream()
                .filter(c -> c.name().equals(name))
                .map(c -> quoted(kind, c))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(kind.name() + " has no " + name));
    }

    String name() {
        return "\"" + kind.table() + "\"";
    }

    private List<Column> columns() {
        return kind.columns().list();
    }

    private static String read(Kind<?> kind, Column column) {
        return counts(kind, column)
                ? "coalesce(rough, (select cast(qty as text) from balance where balance.lot = lot.id), '0')"
                : quoted(kind, column);
    }

    private static String quoted(Kind<?> kind, Column column) {
        return counts(kind, column) ? "rough" : "\"" + column.name() + "\"";
    }

    private static boolean counts(Kind<?> kind, Column column) {
        return kind.type() == Lot.class && column.name().equals("count");
    }
}
