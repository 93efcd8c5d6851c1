package hornbook.indexer.fit;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Meaning;
import hornbook.catalogue.entry.Nearest;
import hornbook.catalogue.entry.Part;
import hornbook.catalogue.entry.Supply;
import hornbook.catalogue.entry.Thing;
import hornbook.catalogue.entry.Word;
import hornbook.shared.shop.BadInput;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Kinds of part and supply by what people call them: their own names, words of the trade, the beginnings of words. */
final class KindNames {
    private static final int MOST_NAMED = 5;

    private final Catalogue catalogue;
    private final Map<String, Thing> byName = new LinkedHashMap<>();

    KindNames(Catalogue catalogue) {
        this.catalogue = catalogue;
        things().forEach(thing -> Stream.of(thing.id(), bare(thing), thing.title())
                .forEach(name -> byName.putIfAbsent(SpokenName.plain(name), thing)));
        things().forEach(
                        thing -> thing.otherNames().forEach(name -> byName.putIfAbsent(SpokenName.plain(name), thing)));
        catalogue.all(Word.class).values().forEach(this::word);
    }

    private Stream<Thing> things() {
        Stream<Entry> parts = catalogue.all(Part.class).values().stream().map(Entry.class::cast);
        return Stream.concat(parts, catalogue.all(Supply.class).values().stream())
                .map(Thing.class::cast);
    }

    private static String bare(Thing thing) {
        return thing.id().replaceFirst("^(part|sup)-", "");
    }

    private void word(Word word) {
        word.meanings().stream()
                .map(Meaning::same)
                .flatMap(id -> catalogue.entry(id).stream())
                .filter(entry -> entry instanceof Part || entry instanceof Supply)
                .findFirst()
                .ifPresent(entry -> byName.putIfAbsent(SpokenName.plain(word.title()), (Thing) entry));
    }

    /**
     * @throws BadInput with those it may mean, or the nearest known
     */
    Thing find(String typed) {
        Thing thing = byName.get(SpokenName.plain(typed));
        if (thing != null) {
            return thing;
        }
        List<Thing> meant = things().filter(
                        each -> new SpokenName(typed).begins(each.title() + " " + String.join(" ", each.otherNames())))
                .toList();
        if (meant.size() == 1) {
            return meant.getFirst();
        }
        throw new BadInput("--kind “" + typed + "” is no kind of part or supply known here: "
                + (meant.isEmpty() ? nearest(typed) : SpokenName.oneOf(ids(meant)) + " may be meant"));
    }

    private static List<String> ids(List<Thing> meant) {
        return meant.stream().limit(MOST_NAMED).map(Thing::id).toList();
    }

    private String nearest(String typed) {
        return Nearest.of(SpokenName.plain(typed), byName.keySet())
                .flatMap(near -> Optional.ofNullable(byName.get(near)))
                .map(near -> "perhaps " + near.id() + " is meant")
                .orElse("“hornbook find " + typed + " --kind part” may show what it is called");
    }
}
