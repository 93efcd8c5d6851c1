package hornbook.shared.store;

import hornbook.shared.shop.ShopUnavailable;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.SQLException;
import java.sql.Statement;

/** Brings a shop's file from the shape it has to the shape this version knows: numbered steps, a transaction each. */
final class Migrations {
    static final int SHAPE = 3;

    /** Marks the file as a shop's, so that another program's database is not taken for one. */
    private static final int APPLICATION = 0x48524e42;

    private Migrations() {}

    static int shape(Query query, Path file) {
        int shape = (int) query.number("pragma user_version");
        if (shape > SHAPE) {
            throw new ShopUnavailable(file + " was written by a newer Hornbook (shape " + shape + ", this one knows "
                    + SHAPE + "): use that one");
        }
        boolean strange = shape == 0
                ? query.number("select count(*) from sqlite_schema") > 0
                : query.number("pragma application_id") != APPLICATION;
        if (strange) {
            throw new ShopUnavailable(file + " is a database, but no shop of Hornbook: name another folder");
        }
        return shape;
    }

    static void run(Query query, int from, int to) throws SQLException {
        for (int step = from + 1; step <= to; step++) {
            boolean done = false;
            query.run("begin immediate");
            try {
                step(query, step);
                query.run("commit");
                done = true;
            } finally {
                if (!done) {
                    query.run("rollback");
                }
            }
        }
    }

    private static void step(Query query, int step) throws SQLException {
        SecondStep second = new SecondStep(query);
        if (step == 2) {
            second.addColumns();
        }
        try (Statement statement = query.connection().createStatement()) {
            // The driver runs a script of several statements, triggers included, as one update.
            statement.executeUpdate(script(step));
        }
        if (step == 2) {
            second.fill();
        }
        query.run("pragma application_id = " + APPLICATION);
        query.run("pragma user_version = " + step);
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
}
