package hornbook.shared.store;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.ShopUnavailable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.SQLiteConfig;

/** Opens connections to a shop's file with the settings that make "saved" true. */
final class Database {
    private Database() {}

    static Connection toWrite(Path file) {
        SQLiteConfig config = config();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        // NORMAL may lose the last commits when the power fails: "saved" would be untrue.
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        return open(file, "", config);
    }

    static Connection toRead(Path file) {
        SQLiteConfig config = config();
        config.setReadOnly(true);
        boolean fixed = !Files.isWritable(file.toAbsolutePath().getParent());
        return open(file, fixed ? "?immutable=1" : "", config);
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
            Connection connection = DriverManager.getConnection(url, config.toProperties());
            try (Statement statement = connection.createStatement()) {
                statement.execute("pragma trusted_schema = off");
                statement.execute("pragma cell_size_check = on");
                statement.executeQuery("select count(*) from sqlite_schema").close();
            }
            return connection;
        } catch (SQLException e) {
            throw damaged(file, e);
        }
    }

    static ShopUnavailable damaged(Path file, SQLException e) {
        String what = e.getMessage() != null && e.getMessage().contains("SQLITE_BUSY")
                ? "is held by another program: close it and try again"
                : "cannot be read as a shop: restore a copy from the folder backups with “hornbook restore FILE”";
        return new ShopUnavailable(file + " " + what, e);
    }

    /** The books could not be written or read. */
    static ShopUnavailable failed(SQLException e) {
        String message = String.valueOf(e.getMessage());
        if (message.contains("SQLITE_FULL")) {
            return new ShopUnavailable("the disk is full: make room and do it again; nothing was changed", e);
        }
        if (message.contains("SQLITE_READONLY")) {
            return new ShopUnavailable("the shop cannot be written: check the permissions of its folder", e);
        }
        return new ShopUnavailable("the books could not be written, nothing was changed: run “hornbook check”", e);
    }

    /** A record that the rules of the books turn away, or a failure of the books. */
    static RuntimeException refused(String what, SQLException e) {
        String message = String.valueOf(e.getMessage());
        if (message.contains("FOREIGN KEY")) {
            return new BadInput(what + ": names something that is not in the books: add that first");
        }
        if (message.contains("UNIQUE")) {
            return new BadInput(what + ": there is one already: choose another number or place");
        }
        if (message.contains("CHECK")) {
            return new BadInput(what + ": a number in it is out of bounds: correct it");
        }
        return failed(e);
    }
}
