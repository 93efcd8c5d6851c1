package hornbook.shared.store;

import hornbook.shared.shop.ShopRecord;
import hornbook.shared.shop.ShopUnavailable;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads records over one connection, in the order in which they were first written. */
final class Query {
    private final Connection connection;

    Query(Connection connection) {
        this.connection = connection;
    }

    <T extends ShopRecord> List<T> all(Class<T> type) {
        Table<T> table = Table.of(type);
        return list(table, table.select(""));
    }

    <T extends ShopRecord> List<T> where(Class<T> type, String column, String value) {
        Table<T> table = Table.of(type);
        return list(table, table.select(" and " + table.column(column) + " = ?"), value);
    }

    <T extends ShopRecord> Optional<T> find(Class<T> type, String id) {
        Table<T> table = Table.of(type);
        return list(table, table.select(" and id = ?"), id).stream().findFirst();
    }

    private <T extends ShopRecord> List<T> list(Table<T> table, String sql, String... values) {
        return rows(sql, table::record, (Object[]) values);
    }

    /** Reads one row. */
    interface RowReader<R> {
        R read(ResultSet row) throws SQLException;
    }

    <R> List<R> rows(String sql, RowReader<R> reader, Object... values) {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            for (int i = 0; i < values.length; i++) {
                statement.setObject(i + 1, values[i]);
            }
            List<R> found = new ArrayList<>();
            try (ResultSet row = statement.executeQuery()) {
                while (row.next()) {
                    found.add(reader.read(row));
                }
            }
            return found;
        } catch (SQLException e) {
            throw new ShopUnavailable("the books cannot be read: run “hornbook check”", e);
        }
    }

    long number(String sql, Object... values) {
        return rows(sql, row -> row.getLong(1), values).getFirst();
    }
}
