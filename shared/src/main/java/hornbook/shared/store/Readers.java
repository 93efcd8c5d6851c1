package hornbook.shared.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.function.Function;

/** Connections to read with: as many as threads ask at once, kept for the next. */
final class Readers implements AutoCloseable {
    private final Path file;
    private final ConcurrentLinkedDeque<Connection> idle = new ConcurrentLinkedDeque<>();
    private volatile boolean closed;

    Readers(Path file) {
        this.file = file;
        idle.push(Database.toRead(file));
    }

    <R> R read(Function<Query, R> question) {
        Connection connection = idle.poll();
        if (connection == null) {
            connection = Database.toRead(file);
        }
        try {
            return question.apply(new Query(connection));
        } finally {
            if (closed) {
                close(connection);
            } else {
                idle.push(connection);
            }
        }
    }

    private static void close(Connection connection) {
        try {
            connection.close();
        } catch (SQLException e) {
            throw Database.failed(e);
        }
    }

    @Override
    public void close() {
        closed = true;
        for (Connection c = idle.poll(); c != null; c = idle.poll()) {
            close(c);
        }
    }
}
