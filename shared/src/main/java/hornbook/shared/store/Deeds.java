package hornbook.shared.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How deeds stand in the books. */
final class Deeds {
    static final String COLUMNS = "select number, title, day, undo_of, undone_by from deed ";

    /** Picks the feed lines of the deed whose number is given twice. */
    static final String LINES = "seq > (select after_seq from deed where number = ?) and seq <= coalesce("
            + "(select after_seq from deed where number = ? + 1), 9223372036854775807) ";

    private Deeds() {}

    static Deed read(ResultSet row) throws SQLException {
        return new Deed(
                row.getLong(1), row.getString(2), LocalDate.parse(row.getString(3)), number(row, 4), number(row, 5));
    }

    private static @Nullable Long number(ResultSet row, int column) throws SQLException {
        long number = row.getLong(column);
        return row.wasNull() ? null : number;
    }

    /** The sum of a deed's row. */
    static long sum(Sums sums, Deed deed) {
        return sums.of(deed.number(), deed.title(), deed.day(), deed.undoOf(), deed.undoneBy());
    }

    static Optional<Deed> find(Query query, long number) {
        return query.first(COLUMNS + "where number = ?", Deeds::read, number);
    }
}
