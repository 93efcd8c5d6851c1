package hornbook.indexer.fit;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Nearest;
import hornbook.catalogue.entry.Part;
import hornbook.catalogue.entry.Supply;
import hornbook.catalogue.entry.Thing;
import hornbook.shared.shop.BadInput;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Kinds of part and supply by what people call them. */
final class KindNames {
    private final Map<String, Thing> byName = new LinkedHashMap<>();

    KindNames(Catalogue catalogue) {
        Stream<Thing> parts = catalogue.all(Part.class).values().stream().map(Thing.class::cast);
        Stream<Thing> supplies = catalogue.all(Supply.class).values().stream().map(Thing.class::cast);
        Stream.concat(parts, supplies)
                .forEach(thing -> Stream.of(thing.id(), bare(thing), thing.title())
                        .forEach(name -> byName.putIfAbsent(key(name), thing)));
        for (Entry entry : catalogue.all()) {
            if (entry instanceof Part || entry instanceof Supply) {
                Thing thing = (Thing) entry;
                thing.otherNames().forEach(name -> byName.putIfAbsent(key(name), thing));
            }
        }
    }

    private static String bare(Thing thing) {
        return thing.id().replaceFirst("^(part|sup)-", "");
    }

    private static String key(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replace('-', ' ');
    }

    /**
     * @throws BadInput with the nearest known
     */
    Thing find(String typed) {
        Thing thing = byName.get(key(typed));
        if (thing == null) {
            throw new BadInput("--kind “" + typed + "” is no kind of part or supply known here: "
                    + Nearest.of(key(typed), byName.keySet())
                            .flatMap(near -> Optional.ofNullable(byName.get(near)))
                            .map(near -> "perhaps " + near.id() + " is meant")
                            .orElse("“hornbook find " + typed + " --kind part” may show what it is called"));
        }
        return thing;
    }
}
