package hornbook.shared.store;

import hornbook.shared.shop.ShopUnavailable;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import org.sqlite.SQLiteConfig;

/**
 * One writer a shop: a lock of the operating system, which ends with its process however that ends.
 *
 * <p>SQLite holds it, on a file of its own that stays empty. A lock taken by hand on a channel is lost as soon as any
 * other channel on that file is closed in the same process, so that a refused second opening would free the shop.
 */
record WriterLock(Connection held) implements AutoCloseable {

    static Optional<WriterLock> take(Path folder) {
        Path file = folder.resolve("lock");
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout(0);
        config.setJournalMode(SQLiteConfig.JournalMode.MEMORY);
        try {
            Connection connection = DriverManager.getConnection(
                    "jdbc:sqlite:file:" + file.toAbsolutePath().toUri().getRawPath(), config.toProperties());
            return hold(connection);
        } catch (SQLException e) {
            if (String.valueOf(e.getMessage()).contains("SQLITE_BUSY")) {
                return Optional.empty();
            }
            throw new ShopUnavailable("cannot write in " + folder + ": check its permissions and the disk", e);
        }
    }

    private static Optional<WriterLock> hold(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            // Of several that ask at once exactly one gets it; an exclusive one they could deny each other.
            statement.execute("begin immediate");
            return Optional.of(new WriterLock(connection));
        } catch (SQLException e) {
            connection.close();
            throw e;
        }
    }

    @Override
    public void close() {
        try {
            held.close();
        } catch (SQLException e) {
            // The process ends its locks anyway.
        }
    }
}
