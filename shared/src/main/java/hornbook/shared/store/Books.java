package hornbook.shared.store;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Kind;
import hornbook.shared.shop.ShopRecord;
import hornbook.shared.shop.ShopUnavailable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * The shop's books: read by anybody, written in deeds by one process at a time.
 *
 * <pre>{@code
 * try (Books books = Books.open(folder, Access.WRITE)) {
 *     books.write("count drawer B-4", w -> w.put(movement));
 * }
 * }</pre>
 *
 * Every call may throw {@link ShopUnavailable} where the file cannot be read or written.
 */
public final class Books implements AutoCloseable {
    private final Path folder;
    private final @Nullable WriterLock lock;
    private final Readers readers;
    private final @Nullable Writer writer;
    private final @Nullable LocalDate asOf;

    Books(Path folder, @Nullable WriterLock lock, Readers readers, @Nullable Writer writer, @Nullable LocalDate asOf) {
        this.folder = folder;
        this.lock = lock;
        this.readers = readers;
        this.writer = writer;
        this.asOf = asOf;
    }

    /** Opens a shop. WRITE makes one in an empty or missing folder and is refused while another process writes. */
    public static Books open(Path folder, Access access) {
        return new Opening(folder, access).open(null);
    }

    /** As {@link #open(Path, Access)}, with today given instead of taken from the shop's clock. */
    public static Books open(Path folder, Access access, LocalDate today) {
        return new Opening(folder, access).open(today);
    }

    /** Is there a shop in that folder? */
    public static boolean in(Path folder) {
        return Files.isRegularFile(folder.resolve(Opening.FILE));
    }

    public Path folder() {
        return folder;
    }

    /** May this process write? If not, another does, or the folder cannot be written. */
    public boolean writable() {
        return writer != null;
    }

    /** Asks several things of the books of one moment, whatever is written meanwhile. */
    public <R> R reading(Function<View, R> questions) {
        return readers.snapshot(query -> questions.apply(new View(query, asOf)));
    }

    private <R> R ask(Function<View, R> question) {
        return readers.read(query -> question.apply(new View(query, asOf)));
    }

    public <T extends ShopRecord> List<T> all(Class<T> type) {
        return ask(view -> view.all(type));
    }

    public <T extends ShopRecord> Optional<T> find(Class<T> type, String id) {
        return ask(view -> view.find(type, id));
    }

    /** As {@link #find}, and also what was retired. */
    public <T extends ShopRecord> Optional<T> evenRetired(Class<T> type, String id) {
        return ask(view -> view.evenRetired(type, id));
    }

    /** The retired records with that value in a column, by its exchange name. */
    public <T extends ShopRecord> List<T> retired(Class<T> type, String column, String value) {
        return ask(view -> view.retired(type, column, value));
    }

    /** The records with that value in a column, by its exchange name. */
    public <T extends ShopRecord> List<T> where(Class<T> type, String column, String value) {
        return ask(view -> view.where(type, column, value));
    }

    /** A setting's JSON value. */
    public Optional<String> setting(String name) {
        return ask(view -> view.setting(name));
    }

    /** Names of the settings there are, in the order in which they were first set. */
    public List<String> settings() {
        return ask(View::settings);
    }

    /** Today by the shop's one clock: as told at opening, else the setting {@code as_of}, else the machine's day. */
    public LocalDate today() {
        return asOf != null ? asOf : ask(View::today);
    }

    /** This moment: today by the shop's clock, the time of day by the machine's. */
    public LocalDateTime now() {
        return today().atTime(LocalTime.now().truncatedTo(ChronoUnit.SECONDS));
    }

    /**
     * Does one thing to the books: all of it, or none.
     *
     * @param title what the person did, in their words: it names the deed when it is undone
     */
    public Deed write(String title, Consumer<Writing> work) {
        return writer().write(title, today(), work);
    }

    /**
     * Does one thing to the books and decides at its end: where the work answers false, every refusal was met and
     * nothing is kept.
     */
    public Optional<Deed> attempt(String title, Predicate<Writing> work) {
        return writer().attempt(title, today(), work);
    }

    /** Takes a deed back; that is a deed of its own. Refused where a later deed touched the same record. */
    public Deed undo(long number) {
        return writer().undo(number, today());
    }

    /**
     * Takes back the last deed that stands and is no undoing itself.
     *
     * @throws hornbook.shared.shop.BadInput where there is none
     */
    public Deed undoLast() {
        Deed last =
                lastStanding().orElseThrow(() -> new BadInput("there is nothing to undo: see “hornbook undo --list”"));
        return undo(last.number());
    }

    /** The last deed that stands and is no undoing itself. */
    public Optional<Deed> lastStanding() {
        return ask(View::lastStanding);
    }

    public Optional<Deed> deed(long number) {
        return ask(view -> view.deed(number));
    }

    /** The last deeds, newest first. */
    public List<Deed> deeds(int most) {
        return ask(view -> view.deeds(most));
    }

    /** The last line of the change feed, 0 in a new shop. */
    public long feedEnd() {
        return ask(View::feedEnd);
    }

    /** What changed after a line of the feed, in order. */
    public List<Change> feedAfter(long seq) {
        return ask(view -> view.feedAfter(seq));
    }

    /** Ids of the records of a kind that a deed touched, in order. */
    public List<String> touched(Deed deed, Class<? extends ShopRecord> type) {
        return readers.read(query -> query.rows(
                "select id from feed where " + Deeds.LINES + "and kind = ? group by id order by min(seq)",
                r -> r.getString(1),
                deed.number(),
                deed.number(),
                Kind.of(type).name()));
    }

    /** Calls a listener after each commit of this process, on the writing thread; what it throws is logged. */
    public void onCommit(Consumer<List<Change>> listener) {
        if (writer != null) {
            writer.onCommit(listener);
        }
    }

    /** Lots whose kept count differs from the sum of their ledger lines; always empty unless the file was harmed. */
    public List<String> wrongBalances() {
        return readers.read(query -> query.rows(Balances.WRONG, r -> r.getString(1)));
    }

    private Writer writer() {
        if (writer == null) {
            throw new ShopUnavailable("the shop in " + folder
                    + " is open to read only, as another Hornbook writes in it: close that one first");
        }
        return writer;
    }

    @Override
    public void close() {
        // The writer last: its closing takes the log into the file, which no reader may then hold open.
        try {
            readers.close();
        } finally {
            try {
                if (writer != null) {
                    writer.close();
                }
            } finally {
                if (lock != null) {
                    lock.close();
                }
            }
        }
    }
}
