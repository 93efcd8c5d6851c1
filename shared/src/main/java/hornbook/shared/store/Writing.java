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
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One deed under way: what is put, retired or moved here is saved whole, or not at all. Every change leaves a line in
 * the feed with the row as it was. A {@link BadInput} leaves the deed as it was before the call; it may go on.
 */
public final class Writing {
    private final Query query;
    private final Tail tail;
    private final long deed;
    private final EntryFiles files;
    private final Loose loose;
    private final Numbers numbers;
    private final Sums sums = new Sums();
    private final List<Change> changes = new ArrayList<>();
    private @Nullable Chain chain;
    private long seq;
    private boolean ended;
    private boolean entries;

    Writing(Query query, References references, Tail tail, EntryFiles files) {
        this.query = query;
        this.tail = tail;
        this.deed = tail.deed() + 1;
        this.files = files;
        this.loose = new Loose(query, references);
        this.numbers = new Numbers(query);
        this.seq = tail.seq();
    }

    long deed() {
        return deed;
    }

    void begin(String title, LocalDate day, @Nullable Long undoOf) {
        chain = new Chain(tail.link(), deed, title, day.toString(), undoOf);
        change(
                "deed",
                "insert into deed (number, title, day, undo_of, after_seq, sum) values (?, ?, ?, ?, ?, ?)",
                deed,
                title,
                day.toString(),
                undoOf,
                seq,
                Deeds.sum(sums, new Deed(deed, title, day, undoOf, null)));
    }

    /** Nothing may be written after this. */
    void end() throws SQLException {
        loose.refuse();
        numbers.keep(sums);
        query.change("update deed set chain = ? where number = ?", chain().link(), deed);
        ended = true;
    }

    private Chain chain() {
        return Objects.requireNonNull(chain, "a deed that was not begun");
    }

    void mark(long undone, @Nullable Long by) {
        Deed was = Deeds.find(query, undone).orElseThrow();
        Deed now = new Deed(undone, was.title(), was.day(), was.undoOf(), by);
        change("deed", "update deed set undone_by = ?, sum = ? where number = ?", by, Deeds.sum(sums, now), undone);
    }

    /** The record of that id, as this deed has left it. */
    public <T extends ShopRecord> Optional<T> find(Class<T> type, String id) {
        return query.find(type, id);
    }

    /** As {@link #find}, and also what was retired. */
    public <T extends ShopRecord> Optional<T> evenRetired(Class<T> type, String id) {
        return query.evenRetired(type, id);
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
        replace(table, record.id(), before, table.kind().columns().cells(record), false);
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
        replace(table, id, before, before.cells(), true);
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
        replace(table, id, before, before.cells(), false);
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
        record Was(String value, long sum) {}
        Was was = query.first(
                        "select value, sum from setting where name = ?",
                        r -> new Was(r.getString(1), r.getLong(2)),
                        name)
                .orElse(null);
        long after = sums.of(name, json);
        change(
                "setting " + name,
                "insert into setting (name, value, sum) values (?, ?, ?) "
                        + "on conflict (name) do update set value = excluded.value, sum = excluded.sum",
                name,
                json,
                after);
        note("setting", name, was == null ? null : was.value, was == null ? 0 : was.sum, after);
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
        entry(
                path,
                content,
                pending.isEmpty() ? files.read(path) : pending.getFirst().orElse(null));
    }

    /** Takes an entry file that was changed by hand as it is; undo brings back what the books had. */
    void adopt(String path) {
        String kept = query.first(
                        "select content from entry where path = ?", r -> Optional.ofNullable(r.getString(1)), path)
                .flatMap(content -> content)
                .orElse(null);
        entry(path, files.read(path), kept);
    }

    private void entry(String path, @Nullable String content, @Nullable String before) {
        entries = true;
        long was = query.first("select sum from entry where path = ?", r -> r.getLong(1), path)
                .orElse(0L);
        long after = sums.of(path, content);
        change(
                "entry " + path,
                "insert into entry_pending (path, content) values (?, ?) "
                        + "on conflict (path) do update set content = excluded.content",
                path,
                content);
        change(
                "entry " + path,
                "insert into entry (path, content, sum) values (?, ?, ?) "
                        + "on conflict (path) do update set content = excluded.content, sum = excluded.sum",
                path,
                content,
                after);
        note("entry", path, before, was, after);
    }

    /** A number never given before, as an id of that kind: {@code lot-0962}. */
    public String nextId(Class<? extends ShopRecord> type) {
        return numbers.next(Kind.of(type));
    }

    List<Change> changes() {
        return List.copyOf(changes);
    }

    boolean touchesEntries() {
        return entries;
    }

    <T extends ShopRecord> @Nullable Stored stored(Table<T> table, String id) {
        int last = table.kind().columns().list().size() + 1;
        return query.first(
                        table.selectStored(),
                        r -> new Stored(table.cells(r), r.getInt(last) == 1, r.getLong(last + 1)),
                        id)
                .orElse(null);
    }

    <T extends ShopRecord> void replace(
            Table<T> table, String id, @Nullable Stored before, List<String> cells, boolean retired) {
        Kind<T> kind = table.kind();
        List<String> kept = table.kept(cells);
        long sum = sums.row(kept, retired);
        try {
            refuseLate();
            PreparedStatement statement = query.prepare(table.put());
            table.bind(statement, id, kept, retired, sum);
            statement.executeUpdate();
        } catch (SQLException e) {
            query.forget(table.put());
            throw turnedAway(kind.name() + " " + id, e);
        }
        note(kind.name(), id, before == null ? null : before.json(), before == null ? 0 : before.sum(), sum);
        if (before == null) {
            numbers.given(kind, id);
        }
        loose.stored(table, id, kept, retired);
    }

    private void note(String kind, String id, @Nullable String before, long was, long after) {
        change(
                kind + " " + id,
                "insert into feed (seq, deed, kind, id, before, was, \"after\") values (?, ?, ?, ?, ?, ?, ?)",
                seq + 1,
                deed,
                kind,
                id,
                before,
                was,
                after);
        changes.add(new Change(++seq, deed, kind, id));
        chain().add(seq, kind, id, before, was, after);
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
