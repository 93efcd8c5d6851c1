package hornbook.viewer.card;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Wanted;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Turns ids that an entry names into what a person calls them. */
final class Titles {
    private final Catalogue catalogue;

    Titles(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    String of(String id) {
        return catalogue.entry(id).map(Entry::title).orElse(id);
    }

    List<Block.Link> links(Collection<String> ids) {
        return ids.stream().map(id -> link(id, null)).toList();
    }

    List<Block.Link> wanted(List<Wanted> things) {
        return things.stream().map(thing -> link(thing.id(), thing.note())).toList();
    }

    Block.Link link(String id, @Nullable String note) {
        String kind = catalogue.entry(id).map(entry -> entry.entryKind().word()).orElse("entry");
        return new Block.Link(kind, id, of(id), note == null ? "" : note);
    }
}
