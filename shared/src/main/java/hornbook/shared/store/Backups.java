package hornbook.shared.store;

import hornbook.shared.shop.ShopUnavailable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;

/** Copies of the books, taken while they are open. */
final class Backups {
    private Backups() {}

    /** A copy before the file's shape is changed, named after the shape it had. */
    static void copyBefore(Connection connection, Path folder, int shape) throws SQLException {
        Path backups = folder.resolve("backups");
        try {
            Files.createDirectories(backups);
        } catch (IOException e) {
            throw new ShopUnavailable(backups + " cannot be made: check the permissions of the shop's folder", e);
        }
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate("backup to '"
                    + backups.resolve("before-shape-" + (shape + 1) + ".db")
                            .toString()
                            .replace("'", "''") + "'");
        }
    }
}
