package hornbook.indexer.index;

import hornbook.indexer.card.RecordKey;
import hornbook.indexer.words.Lexicon;
import hornbook.indexer.words.TextReader;
import hornbook.shared.shop.ShopUnavailable;
import hornbook.shared.store.Books;
import hornbook.shared.store.Change;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.SearcherFactory;
import org.apache.lucene.search.SearcherManager;

/**
 * The index of the process that writes the books. A commit of the books is visible as soon as the listener returns;
 * on the disk it is put when nothing happened for a while, and at closing: until then the change feed remembers it.
 */
final class Follower implements ShopIndex.Holder {
    private static final Logger LOG = Logger.getLogger(Follower.class.getName());
    private static final long IDLE_SECONDS = 5;

    private final Books books;
    private final Knowledge knowledge;
    private final IndexStore store;
    private final SearcherManager searchers;
    private final TextReader reader;
    private final ScheduledExecutorService idle = Executors.newSingleThreadScheduledExecutor(
            Thread.ofPlatform().daemon().name("index-idle").factory());
    private volatile Lexicon lexicon;
    /** Set where a change could not be taken in: from then on answers are as of that moment. */
    private volatile Optional<Instant> behindSince = Optional.empty();

    private Position position;
    private boolean dirty;
    private boolean closed;
    private long lastChange;

    private Follower(
            Books books, Knowledge knowledge, IndexStore store, TextReader reader, Lexicon lexicon, Position at)
            throws IOException {
        this.books = books;
        this.knowledge = knowledge;
        this.store = store;
        this.reader = reader;
        this.lexicon = lexicon;
        this.position = at;
        this.searchers = new SearcherManager(store.writer(), new Impacted());
    }

    static Follower open(IndexFolder files, Books books, Knowledge knowledge, TextReader reader) {
        try {
            Optional<Stamp> stamp = files.trusted().filter(s -> Position.of(s).isIn(books));
            if (stamp.isEmpty()) {
                files.empty();
            }
            return begun(new IndexStore(files.directory(), reader), stamp, books, knowledge, reader);
        } catch (IOException | UncheckedIOException e) {
            throw new ShopUnavailable(
                    "the index cannot be written in " + books.folder()
                            + ": make room on the disk and check its permissions; the books are unharmed",
                    e);
        }
    }

    private static Follower begun(
            IndexStore store, Optional<Stamp> stamp, Books books, Knowledge knowledge, TextReader reader)
            throws IOException {
        try {
            Lexicon lexicon = stamp.isPresent() ? lexicon(store) : Lexicon.empty();
            Position at = stamp.map(Position::of).orElse(Position.START);
            Follower follower = new Follower(books, knowledge, store, reader, lexicon, at);
            follower.begin(stamp);
            return follower;
        } catch (IOException | RuntimeException e) {
            closeAnyhow(store);
            throw e;
        }
    }

    private static void closeAnyhow(IndexStore store) {
        try {
            store.close();
        } catch (RuntimeException e) {
            LOG.log(Level.FINE, "an index that failed could not be closed", e);
        }
    }

    private static Lexicon lexicon(IndexStore store) throws IOException {
        try (var index = org.apache.lucene.index.DirectoryReader.open(store.writer())) {
            return IndexStore.lexicon(index);
        }
    }

    private synchronized void begin(Optional<Stamp> stamp) {
        if (stamp.isEmpty()) {
            rebuild();
        } else {
            List<Change> missed = books.feedAfter(position.seq());
            if (!stamp.get().entries().equals(knowledge.digest())) {
                entriesChanged();
                refresh();
            }
            if (!missed.isEmpty()) {
                take(missed);
            }
        }
        books.onCommit(this::committed);
        idle.scheduleWithFixedDelay(this::commitIfIdle, IDLE_SECONDS, IDLE_SECONDS, TimeUnit.SECONDS);
    }

    private void committed(List<Change> changes) {
        try {
            take(changes);
        } catch (RuntimeException e) {
            // The books have it; the index must not make the saving fail. The next opening makes it good.
            LOG.log(Level.WARNING, "the index could not follow a change and is behind until it is opened again", e);
            behindSince = behindSince.or(() -> Optional.of(Instant.now()));
        }
    }

    private synchronized void take(List<Change> changes) {
        if (closed) {
            return;
        }
        boolean entries = changes.stream().anyMatch(change -> change.kind().equals("entry"));
        if (entries) {
            entriesChanged();
        }
        Set<RecordKey> keys = new Dependents(books, this::lies).of(changes);
        if (!keys.isEmpty()) {
            store.update(knowledge.cards(books), lexicon, keys);
        }
        if (behindSince.isEmpty()) {
            position = Position.end(books);
        }
        if (entries || !keys.isEmpty()) {
            refresh();
        }
    }

    /** Words may mean something else now: then every card reads differently. */
    private void entriesChanged() {
        knowledge.changed();
        Lexicon now = knowledge.lexicon();
        if (now.text().equals(lexicon.text())) {
            store.knowledge(knowledge.cards(books), now);
        } else {
            store.build(knowledge.cards(books), now);
            lexicon = now;
        }
    }

    private String lies(String id) {
        return ask(view -> {
            int document = view.document(id);
            String drawer = document < 0 ? null : view.row(document).shown().drawer();
            return drawer == null ? "" : drawer;
        });
    }

    private void refresh() {
        dirty = true;
        lastChange = System.nanoTime();
        try {
            searchers.maybeRefreshBlocking();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public synchronized Rebuilt rebuild() {
        long start = System.nanoTime();
        Position from = Position.end(books);
        knowledge.changed();
        Lexicon now = knowledge.lexicon();
        int documents = store.build(knowledge.cards(books), now);
        lexicon = now;
        position = from;
        refresh();
        commit();
        return new Rebuilt(documents, (System.nanoTime() - start) / 1e9);
    }

    private synchronized void commitIfIdle() {
        try {
            if (dirty && System.nanoTime() - lastChange > TimeUnit.SECONDS.toNanos(IDLE_SECONDS)) {
                commit();
            }
        } catch (RuntimeException e) {
            LOG.log(Level.WARNING, "the index could not be put on the disk; it is tried again", e);
        }
    }

    private void commit() {
        store.commit(position.stamp(knowledge.digest()));
        dirty = false;
    }

    @Override
    public <R> R ask(Function<View, R> question) {
        try {
            IndexSearcher searcher = searchers.acquire();
            try {
                return question.apply(new View(searcher, lexicon, reader, behindSince));
            } finally {
                searchers.release(searcher);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public synchronized void close() {
        idle.shutdown();
        closed = true;
        try {
            if (dirty) {
                commit();
            }
            searchers.close();
        } catch (IOException | RuntimeException e) {
            // What is not on the disk is in the books; the next opening makes it good.
            LOG.log(Level.WARNING, "the index could not be put on the disk at closing", e);
        } finally {
            closeAnyhow(store);
        }
    }

    /** Searchers that score by impact. */
    static final class Impacted extends SearcherFactory {
        @Override
        public IndexSearcher newSearcher(IndexReader reader, @org.jspecify.annotations.Nullable IndexReader before) {
            return searcher(reader);
        }

        static IndexSearcher searcher(IndexReader reader) {
            IndexSearcher searcher = new IndexSearcher(reader);
            searcher.setSimilarity(new ImpactSimilarity());
            searcher.setQueryCache(null);
            return searcher;
        }
    }
}
