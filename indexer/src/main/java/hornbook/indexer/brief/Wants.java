package hornbook.indexer.brief;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Condition;
import hornbook.catalogue.entry.Conditions;
import hornbook.catalogue.entry.Part;
import hornbook.catalogue.entry.Quirk;
import hornbook.catalogue.entry.Thing;
import hornbook.catalogue.entry.Wanted;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the quirks of a brief want: what they name, and the part that a trait's value is the name of. */
final class Wants {
    private final Catalogue catalogue;
    private final Map<String, Set<String>> quirks = new LinkedHashMap<>();
    private final Map<String, Set<String>> notes = new LinkedHashMap<>();

    Wants(Catalogue catalogue, List<QuirkLine> lines) {
        this.catalogue = catalogue;
        for (QuirkLine line : lines) {
            Quirk quirk = catalogue.quirks().get(line.id());
            if (quirk != null) {
                note(quirk);
            }
        }
    }

    private void note(Quirk quirk) {
        Stream.of(quirk.parts(), quirk.tools(), quirk.supplies())
                .flatMap(List::stream)
                .forEach(w -> want(w, quirk));
        Set<String> values = Conditions.leaves(quirk.when())
                .filter(Condition.Is.class::isInstance)
                .map(leaf -> ((Condition.Is) leaf).value().replace('-', ' '))
                .collect(Collectors.toSet());
        catalogue.all(Part.class).values().stream()
                .filter(part -> named(part).anyMatch(values::contains))
                .forEach(part -> want(new Wanted(part.id(), null), quirk));
    }

    private static Stream<String> named(Part part) {
        return Stream.concat(Stream.of(part.title()), part.otherNames().stream())
                .map(name -> name.toLowerCase(Locale.ROOT));
    }

    private void want(Wanted wanted, Quirk quirk) {
        quirks.computeIfAbsent(wanted.id(), _ -> new LinkedHashSet<>()).add(quirk.id());
        if (wanted.note() != null) {
            notes.computeIfAbsent(wanted.id(), _ -> new LinkedHashSet<>()).add(wanted.note());
        }
    }

    /** What is wanted, in the order of the quirks; what no entry describes is left out. */
    List<Thing> things() {
        return quirks.keySet().stream()
                .flatMap(id -> catalogue.thing(id).stream())
                .toList();
    }

    List<String> wantedBy(String thing) {
        return List.copyOf(quirks.getOrDefault(thing, Set.of()));
    }

    /** Which of it, in words; empty where that does not matter. */
    String which(String thing) {
        return String.join("; ", notes.getOrDefault(thing, Set.of()));
    }
}
