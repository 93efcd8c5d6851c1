package hornbook.indexer.fit;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Comparisons that have to hold together. An unknown name asks a person; it is never taken as false. */
record Check(List<Comparison> all) {
    Check {
        all = List.copyOf(all);
    }

    /** The first comparison that surely does not hold. */
    Optional<Comparison> broken(Names names) {
        return all.stream().filter(c -> c.known(names) && !c.holds(names)).findFirst();
    }

    /** The names that a person has to answer for; none where everything is known. */
    Set<String> unknown(Names names) {
        Set<String> unknown = new TreeSet<>();
        for (Comparison comparison : all) {
            comparison.left().names(unknown);
            comparison.right().names(unknown);
        }
        unknown.removeIf(name -> !Double.isNaN(names.value(name)));
        return unknown;
    }
}
