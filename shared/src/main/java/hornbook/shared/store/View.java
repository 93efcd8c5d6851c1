package hornbook.shared.store;

import hornbook.shared.shop.ShopRecord;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** The books of one moment, to ask several things of; only within {@link Books#reading}. */
public final class View {

    private final Query query;
    private final @Nullable LocalDate told;

    View(Query query, @Nullable LocalDate told) {
        this.query = query;
        this.told = told;
    }

    /** Every record of a kind that is not retired, in the order in which they were first written. */
    public <T extends ShopRecord> List<T> all(Class<T> type) {
        return query.all(type);
    }

    /** As {@link #all}, one after another: a ledger of many years need not stand in memory. */
    public <T extends ShopRecord> void each(Class<T> type, Consumer<T> taker) {
        Table<T> table = Table.of(type);
        query.each(table.selectAll(), row -> taker.accept(table.record(row)));
    }

    /** The numbers of every record of a kind that is not retired. */
    public Set<String> ids(Class<? extends ShopRecord> type) {
        return new LinkedHashSet<>(query.rows(
                "select id from " + Table.of(type).name() + " where retired = 0 order by rowid", r -> r.getString(1)));
    }

    /** The numbers of every record of a kind that is retired. */
    public Set<String> retiredIds(Class<? extends ShopRecord> type) {
        return new LinkedHashSet<>(query.rows(
                "select id from " + Table.of(type).name() + " where retired = 1 order by rowid", r -> r.getString(1)));
    }

    public <T extends ShopRecord> Optional<T> find(Class<T> type, String id) {
        return query.find(type, id);
    }

    /** As {@link #find}, and also what was retired. */
    public <T extends ShopRecord> Optional<T> evenRetired(Class<T> type, String id) {
        return query.evenRetired(type, id);
    }

    /** The records with that value in a column, by its exchange name. */
    public <T extends ShopRecord> List<T> where(Class<T> type, String column, String value) {
        return query.where(type, column, value);
    }

    /** The retired records with that value in a column, by its exchange name. */
    public <T extends ShopRecord> List<T> retired(Class<T> type, String column, String value) {
        Table<T> table = Table.of(type);
        return query.rows(table.selectRetired(column), table::record, value);
    }

    /** A setting's JSON value. */
    public Optional<String> setting(String name) {
        return query.first("select value from setting where name = ? and value <> 'null'", r -> r.getString(1), name);
    }

    /** Names of the settings there are, in the order in which they were first set. */
    public List<String> settings() {
        return query.rows("select name from setting where value <> 'null' order by rowid", r -> r.getString(1));
    }

    /** Today by the shop's one clock: as told at opening, else the setting {@code as_of}, else the machine's day. */
    public LocalDate today() {
        if (told != null) {
            return told;
        }
        return setting("as_of").flatMap(View::day).orElseGet(LocalDate::now);
    }

    /** A setting's value as a day, if it is one. */
    static Optional<LocalDate> day(String json) {
        try {
            return Optional.of(LocalDate.parse(JsonMapper.shared().readValue(json, String.class)));
        } catch (JacksonException | DateTimeException | NullPointerException e) {
            return Optional.empty();
        }
    }

    /** The last line of the change feed, 0 in a new shop. */
    public long feedEnd() {
        return query.number("select coalesce(max(seq), 0) from feed");
    }

    /** What changed after a line of the feed, in order. */
    public List<Change> feedAfter(long seq) {
        return query.rows(
                "select seq, deed, kind, id from feed where seq > ? order by seq",
                r -> new Change(r.getLong(1), r.getLong(2), r.getString(3), r.getString(4)),
                seq);
    }

    public Optional<Deed> deed(long number) {
        return Deeds.find(query, number);
    }

    /** The last deed that stands and does not itself take another back. */
    Optional<Deed> lastStanding() {
        return query.first(
                Deeds.COLUMNS + "where undo_of is null and undone_by is null order by number desc limit 1",
                Deeds::read);
    }

    /** The last deeds, newest first. */
    public List<Deed> deeds(int most) {
        return query.rows(Deeds.COLUMNS + "order by number desc limit ?", Deeds::read, most);
    }
}
