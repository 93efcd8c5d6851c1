package hornbook.indexer.index;

import hornbook.shared.store.Books;
import hornbook.shared.store.Change;
import java.time.Instant;
import java.util.List;

/**
 * How far in the change feed something has read.
 *
 * @param seq the last line read, 0 before the first
 * @param line what it said: books put back from a copy say something else there
 */
record Position(long seq, String line) {
    static final Position START = new Position(0, "");

    static Position of(Stamp stamp) {
        return new Position(stamp.feed(), stamp.line());
    }

    /** The end of the feed. */
    static Position end(Books books) {
        return at(books, books.feedEnd());
    }

    private static Position at(Books books, long seq) {
        if (seq <= 0) {
            return START;
        }
        List<Change> lines = books.feedAfter(seq - 1);
        if (lines.isEmpty() || lines.getFirst().seq() != seq) {
            return START;
        }
        Change change = lines.getFirst();
        return new Position(seq, change.deed() + " " + change.kind() + " " + change.id());
    }

    /** Do the books have that line, and does it say the same there? */
    boolean isIn(Books books) {
        return equals(at(books, seq));
    }

    Stamp stamp(String entries) {
        return new Stamp(Stamp.VERSION, seq, line, entries, Instant.now());
    }
}
