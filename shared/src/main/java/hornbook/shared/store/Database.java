package hornbook.shared.store;

import hornbook.shared.shop.ShopUnavailable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.JDBC;
import org.sqlite.SQLiteConfig;

/** Opens connections to a shop's file with the settings that make "saved" true, and asserts them. */
final class Database {
    private static final int FULL = 2;

    /** Room for the pages of one question; the default of 2 MB makes a check of ten years three times slower. */
    private static final int CACHE_KIB = 16 * 1024;

    private Database() {}

    static Connection toWrite(Path file) {
        SQLiteConfig config = config();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        // NORMAL may lose the last commits when the power fails: "saved" would be untrue.
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        Connection connection = open(file, "", config);
        try {
            insist(connection, "journal_mode", "wal");
            insist(connection, "synchronous", Integer.toString(FULL));
            // After a large import the log is cut back instead of staying as large as it ever was.
            set(connection, "journal_size_limit = " + 16 * 1024 * 1024);
            return connection;
        } catch (SQLException e) {
            throw damaged(file, e);
        }
    }

    /**
     * To read only. On a medium that cannot be written the log's index cannot be made; a file that was closed in order
     * needs none there.
     */
    static Connection toRead(Path file) {
        SQLiteConfig config = config();
        config.setReadOnly(true);
        try {
            return open(file, "", config);
        } catch (ShopUnavailable e) {
            if (!cannotOpen(e)) {
                throw e;
            }
            if (unwrittenLog(file)) {
                throw new ShopUnavailable(
                        file + " was not closed in order and its folder cannot be written: copy the folder to where it"
                                + " can, and open it there",
                        e);
            }
            return open(file, "?immutable=1", config);
        }
    }

    private static boolean cannotOpen(ShopUnavailable e) {
        String cause = String.valueOf(e.getCause());
        return cause.contains("SQLITE_CANTOPEN") || cause.contains("SQLITE_READONLY");
    }

    private static boolean unwrittenLog(Path file) {
        try {
            Path log = file.resolveSibling(file.getFileName() + "-wal");
            return Files.exists(log) && Files.size(log) > 0;
        } catch (IOException e) {
            return true;
        }
    }

    private static SQLiteConfig config() {
        SQLiteConfig config = new SQLiteConfig();
        config.enforceForeignKeys(true);
        config.setBusyTimeout(5_000);
        return config;
    }

    private static Connection open(Path file, String options, SQLiteConfig config) {
        String url = "jdbc:sqlite:file:" + file.toAbsolutePath().toUri().getRawPath() + options;
        try {
            // Not by way of the driver manager: it looks through every jar for other drivers.
            Connection connection = JDBC.createConnection(url, config.toProperties());
            set(connection, "trusted_schema = off");
            set(connection, "cell_size_check = on");
            set(connection, "cache_size = -" + CACHE_KIB);
            insist(connection, "foreign_keys", "1");
            try (Statement statement = connection.createStatement()) {
                statement.executeQuery("select count(*) from sqlite_schema").close();
            }
            return connection;
        } catch (SQLException e) {
            throw damaged(file, e);
        }
    }

    private static void set(Connection connection, String pragma) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute("pragma " + pragma);
        }
    }

    /** The promises of the books hang on these: better no books than books that break them in silence. */
    private static void insist(Connection connection, String pragma, String value) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("pragma " + pragma)) {
            String is = row.next() ? String.valueOf(row.getString(1)) : "nothing";
            if (!is.equals(value)) {
                connection.close();
                throw new ShopUnavailable("the books cannot be kept safely here: " + pragma + " is " + is + " and not "
                        + value + "; use a folder on a local disk");
            }
        }
    }

    static ShopUnavailable damaged(Path file, SQLException e) {
        String message = String.valueOf(e.getMessage());
        String what = message.contains("SQLITE_BUSY")
                ? "is held by another program: close it and try again"
                : message.contains("SQLITE_CANTOPEN")
                        ? "cannot be opened: check its permissions and those of its folder"
                        : message.contains("SQLITE_FULL")
                                ? "cannot be opened, as the disk is full: make room and try again"
                                : "cannot be read as a shop: restore a copy from the folder backups with “hornbook"
                                        + " restore FILE”";
        return new ShopUnavailable(file + " " + what, e);
    }

    static ShopUnavailable unreadable(SQLException e) {
        return new ShopUnavailable("the books cannot be read: run “hornbook check”", e);
    }

    /** The books could not be written; nothing of the deed stays. */
    static ShopUnavailable failed(SQLException e) {
        String message = String.valueOf(e.getMessage());
        if (message.contains("SQLITE_FULL")) {
            return new ShopUnavailable("the disk is full: make room and do it again; nothing was changed", e);
        }
        if (message.contains("SQLITE_READONLY")) {
            return new ShopUnavailable("the shop cannot be written: check the permissions of its folder", e);
        }
        if (message.contains("SQLITE_BUSY")) {
            return new ShopUnavailable(
                    "the books are held by another program: close it and do it again; nothing was changed", e);
        }
        return new ShopUnavailable("the books could not be written, nothing was changed: run “hornbook check”", e);
    }
}
