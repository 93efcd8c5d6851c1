package hornbook.indexer.index;

import hornbook.catalogue.entry.Catalogue;
import hornbook.indexer.words.TextReader;
import hornbook.shared.measure.SizeReader;
import hornbook.shared.store.Books;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * The index of a shop, in its folder {@code index}. Whatever state that folder is in, opening gives an index that can
 * be asked: one that is missing, torn, of another version or of other books is made anew without a question. The
 * process that writes the books keeps it in step with them, commit by commit; another reads what was last put on the
 * disk and says how old it is, or, where there is nothing to read, makes one of its own for as long as it is open.
 */
public final class ShopIndex implements AutoCloseable {
    static final String FOLDER = "index";

    private final Holder holder;

    private ShopIndex(Holder holder) {
        this.holder = holder;
    }

    /**
     * Opens the index of a shop.
     *
     * @param catalogue reads the shipped and own entries; called only where something must be indexed, and again after
     *     entries changed
     * @param sizes reads the standard tables; called when a size is first read
     */
    public static ShopIndex open(Books books, Supplier<Catalogue> catalogue, Supplier<SizeReader> sizes) {
        return open(books, catalogue, sizes, new IndexFolder(books.folder().resolve(FOLDER)));
    }

    static ShopIndex open(Books books, Supplier<Catalogue> catalogue, Supplier<SizeReader> sizes, IndexFolder folder) {
        Knowledge knowledge = new Knowledge(books.folder().resolve("entries"), catalogue);
        TextReader reader = new TextReader(sizes);
        return new ShopIndex(
                books.writable()
                        ? Follower.open(folder, books, knowledge, reader)
                        : OnDisk.open(folder, books, knowledge, reader));
    }

    /** Asks the index as it stands at this moment. */
    public <R> R ask(Function<View, R> question) {
        return holder.ask(question);
    }

    /** Makes the index anew, whatever it is like. */
    public Rebuilt rebuild() {
        return holder.rebuild();
    }

    @Override
    public void close() {
        holder.close();
    }

    /** Somebody who has an open index. */
    interface Holder extends AutoCloseable {
        <R> R ask(Function<View, R> question);

        Rebuilt rebuild();

        @Override
        void close();
    }
}
