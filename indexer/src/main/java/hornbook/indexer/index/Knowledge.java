package hornbook.indexer.index;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.EntryDigest;
import hornbook.indexer.words.Lexicon;
import hornbook.indexer.words.LexiconBuilder;
import java.nio.file.Path;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** The catalogue as the index sees it: read only when something must be indexed, read again when entries changed. */
final class Knowledge {
    private final Path folder;
    private final Supplier<Catalogue> source;
    private @Nullable Catalogue catalogue;

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

    Lexicon lexicon() {
        return LexiconBuilder.of(catalogue());
    }

    String digest() {
        return EntryDigest.of(folder);
    }

    void changed() {
        catalogue = null;
    }
}
