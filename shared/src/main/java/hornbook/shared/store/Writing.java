package hornbook.shared.store;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Kind;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.ShopRecord;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;

/**
 * One deed under way: what is put, retired or moved here is saved whole, or not at all. Every change leaves a line in
 * the feed with the row as it was.
 */
public final class Writing implements AutoCloseable {
    private static final JsonMapper JSON = new JsonMapper();

    private final Connection connection;
    private final long deed;
    private final EntryFiles files;
    private final Query query;
    private final Map<String, PreparedStatement> prepared = new HashMap<>();
    private final List<Change> changes = new ArrayList<>();

    Writing(Connection connection, long deed, EntryFiles files) {
        this.connection = connection;
        this.deed = deed;
        this.files = files;
        this.query = new Query(connection);
    }

    /** The record of that id, as this deed has left it. */
    public <T extends ShopRecord> Optional<T> find(Class<T> type, String id) {
        return query.find(type, id);
    }

    /** The records with that value in a column, as this deed has left them. */
    public <T extends ShopRecord> List<T> where(Class<T> type, String column, String value) {
        return query.where(type, column, value);
    }

    /**
     * Adds a record, or puts it in place of the one with its id. A lot's exact count is what the ledger says, whatever
     * the record holds: to change it, put a {@link Movement}. A movement can only be added.
     *
     * @throws BadInput where it refers to something that is not in the books
     */
    public <T extends ShopRecord> void put(T record) {
        @SuppressWarnings("unchecked")
        Table<T> table = Table.of((Class<T>) record.getClass());
        @Nullable Stored before = record instanceof Movement ? null : stored(table, record.id());
        store(table, record.id(), table.kind().columns().cells(record), false);
        note(table.kind().name(), record.id(), before == null ? null : before.json());
    }

    /** Takes a record out of use; it stays in the books and undo brings it back. */
    public void retire(Class<? extends ShopRecord> type, String id) {
        Table<?> table = Table.of(type);
        Stored before = stored(table, id);
        if (before == null || before.retired()) {
            throw new BadInput(
                    table.kind().name() + " " + id + " is not in the books: look it up with “hornbook find”");
        }
        store(table, id, before.cells(), true);
        note(table.kind().name(), id, before.json());
    }

    /** Sets a setting to a JSON value. */
    public void setting(String name, String json) {
        List<String> before = query.rows("select value from setting where name = ?", r -> r.getString(1), name);
        execute(
                "insert into setting (name, value) values (?, ?) on conflict (name) do update set value = excluded.value",
                name,
                json);
        note("setting", name, before.isEmpty() ? null : before.getFirst());
    }

    /**
     * Writes one of the shop's own entry files, or takes it away.
     *
     * @param path below the folder of entries: {@code model/m-….json}
     * @param content null takes the file away
     */
    public void entry(String path, @Nullable String content) {
        List<Optional<String>> pending = query.rows(
                "select content from entry_pending where path = ?", r -> Optional.ofNullable(r.getString(1)), path);
        @Nullable
        String before =
                pending.isEmpty() ? files.read(path) : pending.getFirst().orElse(null);
        execute(
                "insert into entry_pending (path, content) values (?, ?) "
                        + "on conflict (path) do update set content = excluded.content",
                path,
                content);
        note("entry", path, before);
    }

    /** A number never given before, as an id of that kind: {@code lot-0962}. */
    public String nextId(Class<? extends ShopRecord> type) {
        Kind<? extends ShopRecord> kind = Kind.of(type);
        String prefix = kind.idPrefix();
        String digits =
                "select id from " + Table.of(type).name() + " where id glob ? order by length(id) desc, id desc";
        List<String> highest = query.rows(digits + " limit 1", r -> r.getString(1), prefix + "[0-9]*");
        int width = highest.isEmpty() ? 4 : highest.getFirst().length() - prefix.length();
        long used = highest.stream()
                .map(id -> id.substring(prefix.length()).replaceAll("\\D", ""))
                .mapToLong(Long::parseLong)
                .findFirst()
                .orElse(0);
        long given = query.rows("select last from number_given where kind = ?", r -> r.getLong(1), kind.name()).stream()
                .findFirst()
                .orElse(0L);
        long next = Math.max(used, given) + 1;
        execute(
                "insert into number_given (kind, last) values (?, ?) on conflict (kind) do update set last = excluded.last",
                kind.name(),
                next);
        return prefix + String.format("%0" + width + "d", next);
    }

    List<Change> changes() {
        return List.copyOf(changes);
    }

    /** A stored row: its cells, and whether it is retired. */
    record Stored(List<String> cells, boolean retired) {
        String json() {
            List<String> all = new ArrayList<>(cells);
            all.add(retired ? "1" : "0");
            return JSON.writeValueAsString(all);
        }

        static Stored of(String json) {
            List<String> all = List.of(JSON.readValue(json, String[].class));
            return new Stored(all.subList(0, all.size() - 1), all.getLast().equals("1"));
        }
    }

    <T extends ShopRecord> @Nullable Stored stored(Table<T> table, String id) {
        try {
            PreparedStatement statement = prepare(table.selectStored());
            statement.setString(1, id);
            try (ResultSet row = statement.executeQuery()) {
                if (!row.next()) {
                    return null;
                }
                int last = table.kind().columns().list().size() + 1;
                return new Stored(table.cells(row), row.getInt(last) == 1);
            }
        } catch (SQLException e) {
            throw Database.failed(e);
        }
    }

    <T extends ShopRecord> void store(Table<T> table, String id, List<String> cells, boolean retired) {
        try {
            PreparedStatement statement = prepare(table.put());
            table.bind(statement, id, cells, retired);
            statement.executeUpdate();
        } catch (SQLException e) {
            throw Database.refused(table.kind().name() + " " + id, e);
        }
    }

    void note(String kind, String id, @Nullable String before) {
        execute("insert into feed (deed, kind, id, before) values (?, ?, ?, ?)", deed, kind, id, before);
        changes.add(new Change(0, deed, kind, id));
    }

    void execute(String sql, @Nullable Object... values) {
        try {
            PreparedStatement statement = prepare(sql);
            for (int i = 0; i < values.length; i++) {
                statement.setObject(i + 1, values[i]);
            }
            statement.executeUpdate();
        } catch (SQLException e) {
            throw Database.failed(e);
        }
    }

    private PreparedStatement prepare(String sql) throws SQLException {
        PreparedStatement known = prepared.get(sql);
        if (known == null) {
            known = connection.prepareStatement(sql);
            prepared.put(sql, known);
        }
        return known;
    }

    @Override
    public void close() {
        for (PreparedStatement statement : prepared.values()) {
            try {
                statement.close();
            } catch (SQLException e) {
                throw Database.failed(e);
            }
        }
    }
}
