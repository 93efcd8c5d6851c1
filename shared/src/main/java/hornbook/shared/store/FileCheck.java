package hornbook.shared.store;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/** What SQLite itself can tell of a file: pages, trees, indexes, references; and whether its tables are ours. */
final class FileCheck {
    private FileCheck() {}

    static List<Problem> problems(Query query) {
        List<Problem> found = new ArrayList<>();
        query.each("pragma integrity_check(" + Check.MOST_LINES + ")", row -> {
            String line = String.valueOf(row.getString(1));
            if (!line.equals("ok")) {
                found.add(problem(line));
            }
        });
        query.each("pragma foreign_key_check", row -> {
            if (found.size() < Check.MOST_LINES) {
                found.add(Damage.of(
                        "row " + row.getString(2) + " names a " + row.getString(3) + " that is not there",
                        row.getString(1)));
            }
        });
        if (!tables(query).equals(expected())) {
            found.add(Damage.of("the tables are not those of this Hornbook", Opening.FILE));
        }
        return found;
    }

    private static Problem problem(String line) {
        boolean index = line.contains("missing from index") || line.contains("wrong # of entries in index");
        String what = line.replace('\n', ' ').strip();
        return index
                ? new Problem(what, Opening.FILE, "run “hornbook check --repair”, which makes the index anew")
                : Damage.of(what, Opening.FILE);
    }

    private static List<String> tables(Query query) {
        return query.rows(
                "select type || ' ' || name || ' ' || tbl_name || ' ' || coalesce(sql, '') from sqlite_schema "
                        + "order by 1",
                r -> r.getString(1));
    }

    private static List<String> expected() {
        try (Connection memory = DriverManager.getConnection("jdbc:sqlite::memory:")) {
            Query query = new Query(memory);
            Migrations.run(query, 0, Migrations.SHAPE);
            return tables(query);
        } catch (SQLException e) {
            throw Database.unreadable(e);
        }
    }
}
