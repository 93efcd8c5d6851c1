package hornbook.shared.store;

import hornbook.shared.shop.Kind;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** To the second shape: sums for what stands, and the chain over the deeds done so far. */
final class SecondStep {
    private final Query query;
    private final Sums sums = new Sums();

    SecondStep(Query query) {
        this.query = query;
    }

    /** Before the script: the tables of records, which later versions of the first step may have more of. */
    void addColumns() throws SQLException {
        List<String> tables = query.rows(
                "select name from sqlite_schema m where type = 'table' and exists "
                        + "(select 1 from pragma_table_info(m.name) where name = 'retired')",
                r -> r.getString(1));
        for (String table : tables) {
            query.run("alter table \"" + table + "\" add column sum integer not null default 0");
        }
    }

    void fill() throws SQLException {
        Map<String, Long> now = new HashMap<>();
        Numbers numbers = new Numbers(query);
        for (Kind<?> kind : Kind.KEPT) {
            if (stands(kind)) {
                fill(kind, Table.of(kind.type()), numbers, now);
            }
        }
        numbers.keep(sums);
        settings(now);
        feed(now);
        chain();
    }

    /** A kind that came with a later step has no table yet. */
    private boolean stands(Kind<?> kind) {
        return query.number("select count(*) from sqlite_schema where type = 'table' and name = '" + kind.table() + "'")
                > 0;
    }

    private record Row(long rowid, String id, long sum) {}

    private void fill(Kind<?> kind, Table<?> table, Numbers numbers, Map<String, Long> now) throws SQLException {
        List<Row> rows = query.rows(
                "select rowid, id, " + table.joined() + " from " + table.name(),
                r -> new Row(r.getLong(1), r.getString(2), sums.of(r.getBytes(3))));
        for (Row row : rows) {
            query.change("update " + table.name() + " set sum = ? where rowid = ?", row.sum, row.rowid);
            numbers.given(kind, row.id);
            now.put(key(kind.name(), row.id), row.sum);
        }
    }

    private void settings(Map<String, Long> now) throws SQLException {
        for (String[] row :
                query.rows("select name, value from setting", r -> new String[] {r.getString(1), r.getString(2)})) {
            long sum = sums.of(row[0], row[1]);
            query.change("update setting set sum = ? where name = ?", sum, row[0]);
            now.put(key("setting", row[0]), sum);
        }
    }

    /** From the last line to the first: what a record was before a line is what it was after the one before. */
    private void feed(Map<String, Long> now) throws SQLException {
        record Line(long seq, String key, boolean first) {}
        List<Line> lines = query.rows(
                "select seq, kind, id, before is null from feed order by seq desc",
                r -> new Line(r.getLong(1), key(r.getString(2), r.getString(3)), r.getBoolean(4)));
        for (Line line : lines) {
            long after = now.getOrDefault(line.key, 0L);
            // What exactly stood between two lines is no longer known; only that it changed.
            long was = line.first ? 0 : sums.of(line.key, line.seq);
            query.change("update feed set was = ?, \"after\" = ? where seq = ?", was, after, line.seq);
            now.put(line.key, was);
        }
    }

    private void chain() throws SQLException {
        byte[] link = null;
        for (Deed deed : query.rows(Deeds.COLUMNS + "order by number", Deeds::read)) {
            Chain chain =
                    new Chain(link, deed.number(), deed.title(), deed.day().toString(), deed.undoOf());
            query.each(
                    FEED_LINE + "where " + Deeds.LINES + "order by seq",
                    r -> chain.add(r.getBytes(1), r.getLong(2), r.getLong(3)),
                    deed.number(),
                    deed.number());
            link = chain.link();
            keep(deed, link);
        }
    }

    /** A feed line as the chain takes it, and its sums before and after. */
    static final String FEED_LINE = "select seq || char(31) || kind || char(31) || id || char(31) || "
            + "coalesce(before, ''), was, \"after\" from feed ";

    private void keep(Deed deed, byte @Nullable [] link) throws SQLException {
        query.change("update deed set chain = ?, sum = ? where number = ?", link, Deeds.sum(sums, deed), deed.number());
    }

    private static String key(String kind, String id) {
        return kind + Sums.BETWEEN + id;
    }
}
