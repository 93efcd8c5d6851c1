package hornbook.shared.store;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.ShopUnavailable;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;

/** The one connection that writes: each deed a transaction, then its entry files, then the listeners. */
final class Writer implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger(Writer.class.getName());

    private final Query query;
    private final EntryFiles files;
    private final References references;
    private final List<Consumer<List<Change>>> listeners = new CopyOnWriteArrayList<>();
    private boolean busy;

    Writer(Query query, EntryFiles files) {
        this.query = query;
        this.files = files;
        this.references = References.of(query);
        putPending();
    }

    void onCommit(Consumer<List<Change>> listener) {
        listeners.add(listener);
    }

    synchronized Deed write(String title, LocalDate day, Consumer<Writing> work) {
        return deed(title, day, null, always(work)).orElseThrow();
    }

    synchronized Optional<Deed> attempt(String title, LocalDate day, Predicate<Writing> work) {
        return deed(title, day, null, work);
    }

    synchronized Deed undo(long number, LocalDate day) {
        Deed deed = Deeds.find(query, number)
                .orElseThrow(() -> new BadInput("there is no deed " + number + ": see “hornbook undo”"));
        Undo undo = new Undo(query, references, deed, day);
        return deed(Undo.title(query, deed), day, number, always(undo::into)).orElseThrow();
    }

    private static Predicate<Writing> always(Consumer<Writing> work) {
        return writing -> {
            work.accept(writing);
            return true;
        };
    }

    private Optional<Deed> deed(String title, LocalDate day, @Nullable Long undoOf, Predicate<Writing> work) {
        if (busy) {
            throw new IllegalStateException("a deed within a deed: “" + title + "”");
        }
        busy = true;
        boolean committed = false;
        Writing writing;
        try {
            query.run("begin immediate");
            writing = new Writing(query, references, Tail.of(query), files);
            writing.begin(title, day, undoOf);
            boolean keep = work.test(writing);
            writing.end();
            if (keep) {
                prepareEntries(writing);
                query.run("commit");
                committed = true;
            }
        } catch (SQLException e) {
            throw Database.failed(e);
        } finally {
            busy = false;
            if (!committed) {
                rollback();
            }
        }
        if (!committed) {
            return Optional.empty();
        }
        settle(writing);
        return Optional.of(new Deed(writing.deed(), title, day, undoOf, null));
    }

    private void prepareEntries(Writing writing) {
        if (writing.touchesEntries()) {
            pending().forEach(entry -> files.prepare(entry.path(), entry.content()));
        }
    }

    /** The deed is done; the listeners hear of it even where an entry file could not be put in place. */
    private void settle(Writing writing) {
        try {
            if (writing.touchesEntries()) {
                putPending();
            }
        } finally {
            for (Consumer<List<Change>> listener : listeners) {
                tell(listener, writing.changes());
            }
        }
    }

    /** What a listener throws is its own trouble: the deed is saved, and the others must hear of it. */
    private static void tell(Consumer<List<Change>> listener, List<Change> changes) {
        try {
            listener.accept(changes);
        } catch (RuntimeException e) {
            LOG.log(Level.WARNING, "a listener failed after a deed was saved", e);
        }
    }

    private void rollback() {
        try {
            query.run("rollback");
        } catch (SQLException e) {
            // SQLite ends a transaction by itself where the disk is full or fails; then there is nothing to take back.
            LOG.log(Level.FINE, "nothing to roll back", e);
        }
    }

    private record Pending(String path, @Nullable String content) {}

    private List<Pending> pending() {
        return query.rows("select path, content from entry_pending", r -> new Pending(r.getString(1), r.getString(2)));
    }

    /** The commit promised these files; what a crash left undone is done at the next opening. */
    private void putPending() {
        List<Pending> pending = pending();
        try {
            for (Pending entry : pending) {
                files.put(entry.path(), entry.content());
                query.change("delete from entry_pending where path = ?", entry.path());
            }
        } catch (SQLException e) {
            throw new ShopUnavailable("saved, but the list of entry files could not be kept: run “hornbook check”", e);
        }
    }

    @Override
    public void close() {
        query.close();
    }
}
