package hornbook.indexer.index;

import hornbook.indexer.words.Lexicon;
import hornbook.indexer.words.TextReader;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Books;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Function;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.store.Directory;
import org.jspecify.annotations.Nullable;

/** The index of a process that only reads: that on the disk, however old, or one of its own in a passing folder. */
final class OnDisk implements ShopIndex.Holder {
    private final Books books;
    private final Directory directory;
    private final DirectoryReader index;
    private final Lexicon lexicon;
    private final TextReader reader;
    private final Stamp stamp;
    private final @Nullable Path passing;

    private OnDisk(Books books, Directory directory, TextReader reader, Stamp stamp, @Nullable Path passing)
            throws IOException {
        this.books = books;
        this.directory = directory;
        this.index = DirectoryReader.open(directory);
        this.lexicon = IndexStore.lexicon(index);
        this.reader = reader;
        this.stamp = stamp;
        this.passing = passing;
    }

    static OnDisk open(IndexFolder files, Books books, Knowledge knowledge, TextReader reader) {
        try {
            Optional<Stamp> stamp = files.trusted();
            return stamp.isPresent()
                    ? new OnDisk(books, files.plain(), reader, stamp.get(), null)
                    : passing(books, knowledge, reader);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static OnDisk passing(Books books, Knowledge knowledge, TextReader reader) throws IOException {
        Path folder = Files.createTempDirectory("hornbook-index");
        IndexFolder files = new IndexFolder(folder);
        Position from = Position.end(books);
        Stamp stamp = from.stamp(knowledge.digest());
        try (IndexStore store = new IndexStore(files.directory(), reader)) {
            store.build(knowledge.cards(books), knowledge.lexicon());
            store.commit(stamp);
        }
        return new OnDisk(books, files.directory(), reader, stamp, folder);
    }

    @Override
    public <R> R ask(Function<View, R> question) {
        Optional<Instant> asOf = books.feedEnd() == stamp.feed() ? Optional.empty() : Optional.of(stamp.at());
        return question.apply(new View(Follower.Impacted.searcher(index), lexicon, reader, asOf));
    }

    @Override
    public Rebuilt rebuild() {
        throw new BadInput(
                "the index cannot be made anew while another Hornbook writes in this shop: close that one first");
    }

    @Override
    public void close() {
        try (directory;
                index) {
            // Closed in that order: the index, then its folder.
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            removePassing();
        }
    }

    private void removePassing() {
        if (passing != null) {
            try {
                new IndexFolder(passing).empty();
                Files.deleteIfExists(passing);
            } catch (IOException e) {
                passing.toFile().deleteOnExit();
            }
        }
    }
}
