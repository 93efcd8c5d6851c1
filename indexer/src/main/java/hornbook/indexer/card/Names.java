package hornbook.indexer.card;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Part;
import hornbook.catalogue.entry.Supply;
import hornbook.catalogue.entry.Thing;
import hornbook.indexer.words.Cutter;
import hornbook.shared.shop.Horn;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What the catalogue calls what the books name by id. */
final class Names {
    private final Catalogue catalogue;

    private final Map<String, String> things = new HashMap<>();

    Names(Catalogue catalogue) {
        this.catalogue = catalogue;
        Stream.of(Part.class, Supply.class)
                .flatMap(kind -> catalogue.all(kind).values().stream())
                .forEach(this::name);
    }

    private void name(Thing thing) {
        thing.otherNames().forEach(name -> things.putIfAbsent(Cutter.joined(name), thing.id()));
        things.put(Cutter.joined(thing.title()), thing.id());
    }

    /** The title of an entry, or nothing where there is none. */
    String title(@Nullable String id) {
        return id == null ? "" : catalogue.entry(id).map(Entry::title).orElse("");
    }

    /** The thing that a lot's title names: all before the first comma, or the last words of that, two at least. */
    Optional<String> thing(String title) {
        int comma = title.indexOf(',');
        String named = Cutter.joined(comma < 0 ? title : title.substring(0, comma));
        while (!named.isEmpty()) {
            String thing = things.get(named);
            if (thing != null) {
                return Optional.of(thing);
            }
            named = named.substring(named.indexOf(' ') + 1);
            named = named.indexOf(' ') < 0 ? "" : named;
        }
        return Optional.empty();
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
