package hornbook.indexer.index;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.EntryDigest;
import hornbook.indexer.card.ShopCards;
import hornbook.indexer.words.Lexicon;
import hornbook.indexer.words.LexiconBuilder;
import hornbook.shared.store.Books;
import java.nio.file.Path;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** The catalogue as the index sees it: read only when something must be indexed, read again when entries changed. */
final class Knowledge {
    private final Path folder;
    private final Supplier<Catalogue> source;
    private @Nullable Catalogue catalogue;
    private @Nullable ShopCards cards;

    Knowledge(Path folder, Supplier<Catalogue> source) {
        this.folder = folder;
        this.source = source;
    }

    Catalogue catalogue() {
        Catalogue known = catalogue;
        if (known == null) {
            known = source.get();
            catalogue = known;
        }
        return known;
    }

    /** Makes cards. Kept until entries change: what stands beside what takes longer to find than a lot to save. */
    ShopCards cards(Books books) {
        ShopCards known = cards;
        if (known == null) {
            known = new ShopCards(books, catalogue());
            cards = known;
        }
        return known;
    }

    Lexicon lexicon() {
        return LexiconBuilder.of(catalogue());
    }

    String digest() {
        return EntryDigest.of(folder);
    }

    void changed() {
        catalogue = null;
        cards = null;
    }
}
