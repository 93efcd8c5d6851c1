package hornbook.indexer.fit;

import hornbook.catalogue.entry.Fitting;
import hornbook.catalogue.entry.Nearest;
import hornbook.catalogue.entry.Part;
import hornbook.catalogue.entry.Thing;
import hornbook.shared.shop.BadInput;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The dimensions that can be asked of a kind. */
final class DimensionNames {
    private final Thing kind;
    private final Set<String> chief = new TreeSet<>();
    private final Set<String> all = new TreeSet<>(List.of("material", "colour", "thread"));

    /**
     * @param stated by lots of the kind
     */
    DimensionNames(Thing kind, Fitting fitting, Collection<String> stated) {
        this.kind = kind;
        chief.addAll(stated);
        fitting.works().values().forEach(works -> chief.addAll(Bars.apart(works)));
        chief.addAll(fitting.facts());
        chief.addAll(fitting.derived().keySet());
        all.addAll(chief);
        all.addAll(fitting.usual().keySet());
        all.addAll(fitting.tolerances().keySet());
        all.addAll(fitting.names().keySet());
        all.addAll(List.of("style", "form", "pattern", "set", "count", "tlen", "hole", "rivet", "od", "wall"));
        fitting.blanks().values().forEach(blank -> all.addAll(blank.usual().keySet()));
        if (kind instanceof Part part) {
            part.dimensions().forEach(dimension -> all.add(dimension.replaceFirst(" .*", "")));
        }
    }

    Set<String> all() {
        return chief;
    }

    /**
     * @throws BadInput with the nearest known
     */
    String find(String typed) {
        String name = typed.toLowerCase(java.util.Locale.ROOT).replaceFirst("^color$", "colour");
        if (!all.contains(name)) {
            throw new BadInput(
                    "“" + typed + "” is no dimension of a " + kind.title().toLowerCase(java.util.Locale.ROOT)
                            + ": "
                            + Nearest.of(name, all)
                                    .map(near -> "perhaps " + near + " is meant")
                                    .orElse("it has " + String.join(", ", chief)));
        }
        return name;
    }
}
