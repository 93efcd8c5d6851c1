package hornbook.shared.store;

import hornbook.shared.shop.ShopUnavailable;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/** Brings a shop's file from the shape it has to the shape this version knows: numbered steps, a transaction each. */
final class Migrations {
    static final int SHAPE = 1;

    /** Marks the file as a shop's, so that another program's database is not taken for one. */
    private static final int APPLICATION = 0x48524e42;

    private Migrations() {}

    static int shape(Connection connection, Path file) throws SQLException {
        int shape = pragma(connection, "user_version");
        if (shape > SHAPE) {
            throw new ShopUnavailable(file + " was written by a newer Hornbook (shape " + shape + ", this one knows "
                    + SHAPE + "): use that one");
        }
        if (shape > 0 && pragma(connection, "application_id") != APPLICATION) {
            throw new ShopUnavailable(file + " is a database, but no shop of Hornbook: name another folder");
        }
        return shape;
    }

    static void run(Connection connection, int from) throws SQLException {
        for (int step = from + 1; step <= SHAPE; step++) {
            connection.setAutoCommit(false);
            try (Statement statement = connection.createStatement()) {
                // The driver runs a script of several statements, triggers included, as one update.
                statement.executeUpdate(script(step));
                statement.execute("pragma application_id = " + APPLICATION);
                statement.execute("pragma user_version = " + step);
                connection.commit();
            } finally {
                connection.setAutoCommit(true);
            }
        }
    }

    private static String script(int step) {
        try (InputStream in = Migrations.class.getResourceAsStream("schema-" + step + ".sql")) {
            if (in == null) {
                throw new IllegalStateException("no schema step " + step);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static int pragma(Connection connection, String name) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("pragma " + name)) {
            return row.getInt(1);
        }
    }
}
