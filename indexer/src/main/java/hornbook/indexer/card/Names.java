package hornbook.indexer.card;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Thing;
import hornbook.shared.shop.Horn;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What the catalogue calls what the books name by id. */
final class Names {
    private final Catalogue catalogue;

    Names(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** The title of an entry, or nothing where there is none. */
    String title(@Nullable String id) {
        return id == null ? "" : catalogue.entry(id).map(Entry::title).orElse("");
    }

    List<String> otherNames(String thing) {
        return catalogue.thing(thing).map(Thing::otherNames).orElse(List.of());
    }

    /** Says of a horn's make, model and name on a card. */
    void horn(Draft card, Horn horn, float weight) {
        card.say(Field.NAME, title(horn.make()))
                .say(Field.NAME, title(horn.model()))
                .say(Field.NAME, title(horn.soldAs()))
                .say(Field.NAME, horn.serial())
                .concept(horn.model(), weight)
                .concept(horn.make(), weight)
                .concept(horn.soldAs(), weight)
                .concept("family-member=" + horn.instrument(), weight);
    }

    /** What a person calls a horn: its model, or its make and instrument, and the name it was sold under. */
    String of(Horn horn) {
        String model = title(horn.model());
        String made = model.isEmpty() ? (title(horn.make()) + " " + horn.instrument()).strip() : model;
        String sold = Optional.of(title(horn.soldAs()))
                .filter(name -> !name.isEmpty())
                .map(name -> ", sold as " + name)
                .orElse("");
        return made + sold;
    }
}
