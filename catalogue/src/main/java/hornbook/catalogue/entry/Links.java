package hornbook.catalogue.entry;

import java.util.List;
import java.util.Optional;

/** Checks that what an entry names exists. */
final class Links {
    private Links() {}

    /** Remarks on ids and values that do not exist; what they name may come later, so nothing is set aside. */
    static List<Problem> check(Entry entry, String file, Catalogue catalogue) {
        return LinkList.of(entry).stream()
                .flatMap(link -> wrong(link, file, catalogue).stream())
                .distinct()
                .toList();
    }

    private static Optional<Problem> wrong(Link link, String file, Catalogue catalogue) {
        Optional<Entry> named = catalogue.entry(link.id());
        if (named.isEmpty()) {
            boolean pattern = catalogue.models().keySet().stream().anyMatch(m -> m.startsWith(link.id() + "-"));
            return pattern ? Optional.empty() : Optional.of(noSuchId(link, file, catalogue));
        }
        boolean known = link.value().isEmpty()
                || named.get() instanceof Trait trait
                        && trait.value(link.value()).isPresent();
        return known ? Optional.empty() : Optional.of(noSuchValue(link, file, named.get()));
    }

    private static Problem noSuchId(Link link, String file, Catalogue catalogue) {
        String todo = Nearest.of(link.id(), catalogue.ids())
                .map(n -> "perhaps " + n + " is meant")
                .orElse("mend the id, or add the entry");
        return new Problem(file, link.field(), "nothing has the id " + link.id(), todo, false);
    }

    private static Problem noSuchValue(Link link, String file, Entry named) {
        List<String> values = named instanceof Trait trait
                ? trait.values().stream().map(TraitValue::id).toList()
                : List.of();
        String todo = Nearest.of(link.value(), values)
                .map(n -> "perhaps " + n + " is meant")
                .orElse("its values are " + String.join(", ", values));
        return new Problem(file, link.field(), link.value() + " is not a value of " + link.id(), todo, false);
    }
}
