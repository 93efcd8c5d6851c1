package hornbook.shared.store;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Kind;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.ShopRecord;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;

/**
 * One deed under way: what is put, retired or moved here is saved whole, or not at all. Every change leaves a line in
 * the feed with the row as it was. A {@link BadInput} leaves the deed as it was before the call; it may go on.
 */
public final class Writing {
    private static final JsonMapper JSON = new JsonMapper();

    private final Query query;
    private final long deed;
    private final EntryFiles files;
    private final Loose loose;
    private final List<Change> changes = new ArrayList<>();
    private long seq;
    private boolean ended;
    private boolean entries;

    Writing(Query query, References references, long deed, EntryFiles files) {
        this.query = query;
        this.deed = deed;
        this.files = files;
        this.loose = new Loose(query, references);
        this.seq = query.number("select coalesce(max(seq), 0) from feed");
    }

    long deed() {
        return deed;
    }

    void begin(String title, LocalDate day, @Nullable Long undoOf) {
        change(
                "deed",
                "insert into deed (number, title, day, undo_of) values (?, ?, ?, ?)",
                deed,
                title,
                day.toString(),
                undoOf);
    }

    /** Nothing may be written after this. */
    void end() {
        loose.refuse();
        ended = true;
    }

    void mark(long undone, @Nullable Long by) {
        change("deed", "update deed set undone_by = ? where number = ?", by, undone);
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
     * Adds a record, or puts it in place of the one with its id, which it brings back where that is retired. A lot's
     * exact count is what the ledger says, whatever the record holds: to change it, put a {@link Movement}. A movement
     * can only be added.
     *
     * @throws BadInput where it refers to something that is not in the books
     */
    public <T extends ShopRecord> void put(T record) {
        @SuppressWarnings("unchecked")
        Table<T> table = Table.of((Class<T>) record.getClass());
        Stored before = record instanceof Movement ? null : stored(table, record.id());
        replace(table, record.id(), before, new Stored(table.kind().columns().cells(record), false));
    }

    /** Takes a record out of use; it stays in the books and undo brings it back. */
    public void retire(Class<? extends ShopRecord> type, String id) {
        retire(Table.of(type), id);
    }

    private <T extends ShopRecord> void retire(Table<T> table, String id) {
        Stored before = stored(table, id);
        if (before == null || before.retired()) {
            throw new BadInput(
                    table.kind().name() + " " + id + " is not in the books: look it up with “hornbook find”");
        }
        if (table.kind().type() == Movement.class) {
            throw new BadInput("movement " + id + ": the ledger is only added to; put a correction");
        }
        replace(table, id, before, new Stored(before.cells(), true));
    }

    /** Brings a retired record back as it was. */
    public void bringBack(Class<? extends ShopRecord> type, String id) {
        bringBack(Table.of(type), id);
    }

    private <T extends ShopRecord> void bringBack(Table<T> table, String id) {
        Stored before = stored(table, id);
        if (before == null || !before.retired()) {
            throw new BadInput(table.kind().name() + " " + id + " is not retired: nothing to bring back");
        }
        replace(table, id, before, new Stored(before.cells(), false));
    }

    /**
     * Sets a setting to a JSON value; {@code null} reads as not there.
     *
     * @throws BadInput where {@code as_of} is given something that is no day
     */
    public void setting(String name, String json) {
        if (name.equals("as_of") && !json.equals("null") && View.day(json).isEmpty()) {
            throw new BadInput("setting as_of: “" + json + "” is not a day as \"2026-09-30\"");
        }
        String before = query.first("select value from setting where name = ?", r -> r.getString(1), name)
                .orElse(null);
        change(
                "setting " + name,
                "insert into setting (name, value) values (?, ?) on conflict (name) do update set value = excluded.value",
                name,
                json);
        note("setting", name, before);
    }

    /**
     * Writes one of the shop's own entry files, or takes it away.
     *
     * @param path below the folder of entries: {@code model/m-….json}
     * @param content null takes the file away
     */
    public void entry(String path, @Nullable String content) {
        entries = true;
        List<Optional<String>> pending = query.rows(
                "select content from entry_pending where path = ?", r -> Optional.ofNullable(r.getString(1)), path);
        String before =
                pending.isEmpty() ? files.read(path) : pending.getFirst().orElse(null);
        change(
                "entry " + path,
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
        change(
                "number",
                "insert into number_given (kind, last) values (?, ?) on conflict (kind) do update set last = excluded.last",
                kind.name(),
                next);
        return prefix + String.format("%0" + width + "d", next);
    }

    List<Change> changes() {
        return List.copyOf(changes);
    }

    boolean touchesEntries() {
        return entries;
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
        int last = table.kind().columns().list().size() + 1;
        return query.first(table.selectStored(), r -> new Stored(table.cells(r), r.getInt(last) == 1), id)
                .orElse(null);
    }

    <T extends ShopRecord> void replace(Table<T> table, String id, @Nullable Stored before, Stored after) {
        String what = table.kind().name() + " " + id;
        try {
            refuseLate();
            PreparedStatement statement = query.prepare(table.put());
            table.bind(statement, id, after.cells(), after.retired());
            statement.executeUpdate();
        } catch (SQLException e) {
            throw turnedAway(what, e);
        }
        note(table.kind().name(), id, before == null ? null : before.json());
        loose.stored(table, id, after.cells(), after.retired());
    }

    private void note(String kind, String id, @Nullable String before) {
        change(
                kind + " " + id,
                "insert into feed (seq, deed, kind, id, before) values (?, ?, ?, ?, ?)",
                seq + 1,
                deed,
                kind,
                id,
                before);
        changes.add(new Change(++seq, deed, kind, id));
    }

    private void change(String what, String sql, @Nullable Object... values) {
        try {
            refuseLate();
            query.change(sql, values);
        } catch (SQLException e) {
            throw turnedAway(what, e);
        }
    }

    /** A record that breaks a rule is turned away and the deed goes on; after any other failure nothing more goes in. */
    private RuntimeException turnedAway(String what, SQLException e) {
        Optional<BadInput> rule = Rules.broken(what, e);
        if (rule.isPresent()) {
            return rule.get();
        }
        ended = true;
        return Database.failed(e);
    }

    private void refuseLate() {
        if (ended) {
            throw new IllegalStateException("deed " + deed + " is over");
        }
    }
}
