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
import java.util.stream.Collectors;

/** The SQL of one kind of record, made from its columns. */
record Table<T extends ShopRecord>(Kind<T> kind) {

    static <T extends ShopRecord> Table<T> of(Class<T> type) {
        return new Table<>(Kind.of(type));
    }

    String select(String condition) {
        String parts = columns().stream().map(this::read).collect(Collectors.joining(", "));
        return "select " + parts + " from " + name() + " where retired = 0" + condition + " order by " + name()
                + ".rowid";
    }

    /** The stored row, retired or not: what undo needs. */
    String selectStored() {
        String parts = columns().stream().map(this::quoted).collect(Collectors.joining(", "));
        return "select " + parts + ", retired from " + name() + " where id = ?";
    }

    String put() {
        List<String> names =
                new ArrayList<>(columns().stream().map(this::quoted).toList());
        if (addsId()) {
            names.add("id");
        }
        names.add("retired");
        String marks = String.join(", ", Collections.nCopies(names.size(), "?"));
        String insert = "insert into " + name() + " (" + String.join(", ", names) + ") values (" + marks + ")";
        if (kind.type() == Movement.class) {
            return insert;
        }
        String updates = names.stream().map(n -> n + " = excluded." + n).collect(Collectors.joining(", "));
        return insert + " on conflict (id) do update set " + updates;
    }

    /** Fills the marks of {@link #put()} from the cells of a record. */
    void bind(PreparedStatement statement, String id, List<String> cells, boolean retired) throws SQLException {
        int mark = 1;
        for (Column column : columns()) {
            bind(statement, mark++, column, cells.get(mark - 2));
        }
        if (addsId()) {
            statement.setString(mark++, id);
        }
        statement.setInt(mark, retired ? 1 : 0);
    }

    private void bind(PreparedStatement statement, int mark, Column column, String cell) throws SQLException {
        if (counts(column)) {
            // A number is the ledger's to say; only words are kept with the lot.
            boolean rough =
                    Count.read(cell).filter(Count.Rough.class::isInstance).isPresent();
            statement.setString(mark, rough ? cell : null);
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
                .map(this::quoted)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(kind.name() + " has no " + name));
    }

    String name() {
        return "\"" + kind.table() + "\"";
    }

    private List<Column> columns() {
        return kind.columns().list();
    }

    private boolean addsId() {
        return columns().stream().noneMatch(c -> c.name().equals("id"));
    }

    private String read(Column column) {
        return counts(column)
                ? "coalesce(rough, (select cast(qty as text) from balance where balance.lot = lot.id), '0')"
                : quoted(column);
    }

    private String quoted(Column column) {
        return counts(column) ? "rough" : "\"" + column.name() + "\"";
    }

    private boolean counts(Column column) {
        return kind.type() == Lot.class && column.name().equals("count");
    }
}
