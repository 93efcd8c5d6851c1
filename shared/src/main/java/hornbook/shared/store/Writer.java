package hornbook.shared.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** The one connection that writes: each deed a transaction, then its entry files, then the listeners. */
final class Writer implements AutoCloseable {
    private final Connection connection;
    private final EntryFiles files;
    private final List<Consumer<List<Change>>> listeners = new CopyOnWriteArrayList<>();

    Writer(Connection connection, EntryFiles files) throws SQLException {
        this.connection = connection;
        this.files = files;
        connection.setAutoCommit(false);
        writeOut();
    }

    void onCommit(Consumer<List<Change>> listener) {
        listeners.add(listener);
    }

    synchronized Deed write(String title, LocalDate day, Consumer<Writing> work) {
        return deed(title, day, null, work);
    }

    synchronized Deed undo(Deed deed, LocalDate day) {
        Undo undo = new Undo(new Query(connection), deed);
        return deed("undo “" + deed.title() + "”", day, deed.number(), w -> {
            undo.into(w, day);
            w.execute("update deed set undone_by = (select max(number) from deed) where number = ?", deed.number());
            // To undo an undo is to do the first thing again.
            w.execute("update deed set undone_by = null where number = ?", deed.undoOf());
        });
    }

    private Deed deed(String title, LocalDate day, @Nullable Long undoOf, Consumer<Writing> work) {
        try {
            long number = new Query(connection).number("select coalesce(max(number), 0) + 1 from deed");
            List<Change> changes;
            try (Writing writing = new Writing(connection, number, files)) {
                writing.execute(
                        "insert into deed (number, title, day, undo_of) values (?, ?, ?, ?)",
                        number,
                        title,
                        day.toString(),
                        undoOf);
                work.accept(writing);
                changes = writing.changes();
            }
            connection.commit();
            writeOut();
            listeners.forEach(listener -> listener.accept(changes));
            return new Deed(number, title, day, undoOf, null);
        } catch (SQLException e) {
            rollback();
            throw Database.failed(e);
        } catch (RuntimeException e) {
            rollback();
            throw e;
        }
    }

    private void rollback() {
        try {
            connection.rollback();
        } catch (SQLException e) {
            throw Database.failed(e);
        }
    }

    private record Pending(String path, @Nullable String content) {}

    /** The commit promised these files; what a crash left undone is done at the next opening. */
    private void writeOut() throws SQLException {
        Query query = new Query(connection);
        List<Pending> pending =
                query.rows("select path, content from entry_pending", r -> new Pending(r.getString(1), r.getString(2)));
        if (!pending.isEmpty()) {
            pending.forEach(entry -> files.write(entry.path(), entry.content()));
            try (Writing writing = new Writing(connection, 0, files)) {
                writing.execute("delete from entry_pending");
            }
        }
        connection.commit();
    }

    @Override
    public void close() {
        try {
            connection.close();
        } catch (SQLException e) {
            throw Database.failed(e);
        }
    }
}
