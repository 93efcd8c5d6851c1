package hornbook.shared.store;

import hornbook.shared.shop.ShopRecord;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One connection and the statements prepared on it; for one thread at a time. */
final class Query implements AutoCloseable {
    /** More than the shop has questions; a bound all the same, as column names make new ones. */
    private static final int KEPT = 200;

    private final Connection connection;
    private final Map<String, PreparedStatement> prepared = new LinkedHashMap<>(64, 0.75f, true);

    Query(Connection connection) {
        this.connection = connection;
    }

    Connection connection() {
        return connection;
    }

    /** Records in the order in which they were first written. */
    <T extends ShopRecord> List<T> all(Class<T> type) {
        Table<T> table = Table.of(type);
        return rows(table.selectAll(), table::record);
    }

    <T extends ShopRecord> List<T> where(Class<T> type, String column, String value) {
        Table<T> table = Table.of(type);
        return rows(table.selectWhere(column), table::record, value);
    }

    <T extends ShopRecord> Optional<T> find(Class<T> type, String id) {
        Table<T> table = Table.of(type);
        return first(table.selectOne(), table::record, id);
    }

    <T extends ShopRecord> Optional<T> evenRetired(Class<T> type, String id) {
        Table<T> table = Table.of(type);
        return first(table.selectEvenRetired(), table::record, id);
    }

    /** Reads one row. */
    interface RowReader<R> {
        R read(ResultSet row) throws SQLException;
    }

    <R> List<R> rows(String sql, RowReader<R> reader, @Nullable Object... values) {
        List<R> found = new ArrayList<>();
        each(sql, row -> found.add(reader.read(row)), values);
        return found;
    }

    <R> Optional<R> first(String sql, RowReader<R> reader, @Nullable Object... values) {
        return rows(sql, reader, values).stream().findFirst();
    }

    /** Takes one row after another. */
    interface RowTaker {
        void take(ResultSet row) throws SQLException;
    }

    void each(String sql, RowTaker taker, @Nullable Object... values) {
        try (ResultSet row = bound(sql, values).executeQuery()) {
            while (row.next()) {
                taker.take(row);
            }
        } catch (SQLException e) {
            forget(sql);
            throw Database.unreadable(e);
        }
    }

    long number(String sql, @Nullable Object... values) {
        return rows(sql, row -> row.getLong(1), values).getFirst();
    }

    /** Changes rows; the number of them. */
    int change(String sql, @Nullable Object... values) throws SQLException {
        try {
            return bound(sql, values).executeUpdate();
        } catch (SQLException e) {
            forget(sql);
            throw e;
        }
    }

    /** The driver closes a statement that failed, and would answer nonsense the next time. */
    void forget(String sql) {
        PreparedStatement failed = prepared.remove(sql);
        if (failed != null) {
            try {
                failed.close();
            } catch (SQLException e) {
                // It is closed already; that is why it is forgotten.
            }
        }
    }

    /** Begins, ends or sets something. */
    void run(String sql) throws SQLException {
        try {
            prepare(sql).execute();
        } catch (SQLException e) {
            forget(sql);
            throw e;
        }
    }

    private PreparedStatement bound(String sql, @Nullable Object... values) throws SQLException {
        PreparedStatement statement = prepare(sql);
        for (int i = 0; i < values.length; i++) {
            statement.setObject(i + 1, values[i]);
        }
        return statement;
    }

    PreparedStatement prepare(String sql) throws SQLException {
        PreparedStatement known = prepared.get(sql);
        if (known != null) {
            return known;
        }
        if (prepared.size() >= KEPT) {
            var oldest = prepared.entrySet().iterator();
            oldest.next().getValue().close();
            oldest.remove();
        }
        PreparedStatement fresh = connection.prepareStatement(sql);
        prepared.put(sql, fresh);
        return fresh;
    }

    @Override
    public void close() {
        try {
            for (PreparedStatement statement : prepared.values()) {
                statement.close();
            }
            connection.close();
        } catch (SQLException e) {
            throw Database.failed(e);
        }
    }
}
