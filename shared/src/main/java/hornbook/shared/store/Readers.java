package hornbook.shared.store;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.function.Function;

/** Connections to read with: as many as threads ask at once, kept for the next. */
final class Readers implements AutoCloseable {
    private final Path file;
    private final ConcurrentLinkedDeque<Query> idle = new ConcurrentLinkedDeque<>();
    private volatile boolean closed;

    Readers(Path file) {
        this.file = file;
        idle.push(new Query(Database.toRead(file)));
    }

    /** One question. */
    <R> R read(Function<Query, R> question) {
        Query query = idle.poll();
        if (query == null) {
            query = new Query(Database.toRead(file));
        }
        try {
            return question.apply(query);
        } finally {
            giveBack(query);
        }
    }

    /** Several questions that all see the books of one moment, however much is written meanwhile. */
    <R> R snapshot(Function<Query, R> questions) {
        return read(query -> {
            try {
                query.run("begin");
                try {
                    return questions.apply(query);
                } finally {
                    query.run("rollback");
                }
            } catch (SQLException e) {
                throw Database.unreadable(e);
            }
        });
    }

    private void giveBack(Query query) {
        idle.push(query);
        if (closed) {
            close();
        }
    }

    @Override
    public void close() {
        closed = true;
        for (Query q = idle.poll(); q != null; q = idle.poll()) {
            q.close();
        }
    }
}
