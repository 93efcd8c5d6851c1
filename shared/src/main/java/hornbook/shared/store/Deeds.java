package hornbook.shared.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;

/** How deeds stand in the books. */
final class Deeds {
    static final String COLUMNS = "select number, title, day, undo_of, undone_by from deed ";

    private Deeds() {}

    static Deed read(ResultSet row) throws SQLException {
        return new Deed(
                row.getLong(1),
                row.getString(2),
                LocalDate.parse(row.getString(3)),
                (Long) (row.getObject(4) == null ? null : row.getLong(4)),
                (Long) (row.getObject(5) == null ? null : row.getLong(5)));
    }
}
