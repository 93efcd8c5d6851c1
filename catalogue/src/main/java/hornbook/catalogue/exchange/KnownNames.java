package hornbook.catalogue.exchange;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Make;
import hornbook.catalogue.entry.Meaning;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Part;
import hornbook.catalogue.entry.Supply;
import hornbook.catalogue.entry.Thing;
import hornbook.catalogue.entry.Word;
import hornbook.shared.exchange.Names;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What the catalogue makes of the names on a person's list; only what is plain is taken, the rest stays text. */
public final class KnownNames implements Names {
    private final Catalogue catalogue;
    private final Map<String, String> things = new HashMap<>();

    public KnownNames(Catalogue catalogue) {
        this.catalogue = catalogue;
        List<Thing> all = Stream.concat(
                        catalogue.all(Part.class).values().stream().map(Thing.class::cast),
                        catalogue.all(Supply.class).values().stream().map(Thing.class::cast))
                .toList();
        all.forEach(thing -> things.putIfAbsent(folded(thing.id()), thing.id()));
        all.forEach(thing -> things.putIfAbsent(folded(thing.title()), thing.id()));
        for (Word word : catalogue.all(Word.class).values()) {
            word.meanings().stream()
                    .map(Meaning::same)
                    .filter(id -> id.startsWith("part-") || id.startsWith("sup-"))
                    .findFirst()
                    .ifPresent(id -> things.putIfAbsent(folded(word.title()), id));
        }
        all.forEach(thing -> thing.otherNames().forEach(name -> things.putIfAbsent(folded(name), thing.id())));
    }

    @Override
    public Optional<String> make(String written) {
        return catalogue.makes().values().stream()
                .filter(make -> Stream.concat(Stream.of(make.id(), make.title()), make.otherNames().stream())
                        .anyMatch(name -> folded(name).equals(folded(written))))
                .map(Make::id)
                .findFirst();
    }

    @Override
    public Optional<String> model(String make, String written, String instrument) {
        String wanted = folded(written);
        Optional<String> of = make(make);
        return only(catalogue.models().values().stream()
                .filter(m -> of.isEmpty() || m.make().equals(of.get()))
                .filter(m -> instrument.isBlank() || m.instruments().contains(folded(instrument)))
                .filter(m -> folded(m.id()).equals(wanted)
                        || folded(m.title()).equals(wanted)
                        || folded(m.pattern()).equals(wanted))
                .map(Model::id)
                .toList());
    }

    @Override
    public Optional<String> task(String written) {
        return catalogue.tasks().values().stream()
                .filter(task -> folded(task.id()).equals(folded(written))
                        || folded(task.id().replace("task-", "").replace('-', ' '))
                                .equals(folded(written))
                        || folded(task.title()).equals(folded(written)))
                .map(Entry::id)
                .findFirst();
    }

    @Override
    public Optional<String> thing(String title) {
        return Optional.ofNullable(things.get(folded(title)))
                .or(() -> Optional.ofNullable(things.get(folded(title.split("[,;(]", 2)[0]))))
                .or(() -> HeadWords.of(title).stream()
                        .flatMap(words -> Optional.ofNullable(things.get(words)).stream())
                        .findFirst());
    }

    private static Optional<String> only(Collection<String> found) {
        return found.size() == 1 ? found.stream().findFirst() : Optional.empty();
    }

    private static String folded(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }
}
