package hornbook.indexer.fit;

import hornbook.indexer.fit.Want.Between;
import java.util.ArrayList;
import java.util.List;

/**
 * Around what is wanted and the bounds of checks, as wide as all operations on the dimension have to leave one another.
 * Outside of these it is never dearer to be nearer to one of them, so that only as far as an operation reaches matters
 * there; within, a cut more or less does.
 */
record Zones(List<Between> all) {
    Zones {
        all = List.copyOf(all);
    }

    boolean hold(double mm) {
        return all.stream().anyMatch(zone -> mm >= zone.low() - Formula.NOTHING && mm <= zone.high() + Formula.NOTHING);
    }

    List<Double> edges() {
        List<Double> edges = new ArrayList<>();
        for (Between zone : all) {
            edges.add(zone.low());
            edges.add(zone.high());
        }
        return edges;
    }

    double widest() {
        return all.stream().mapToDouble(zone -> zone.high() - zone.low()).max().orElse(0);
    }
}
