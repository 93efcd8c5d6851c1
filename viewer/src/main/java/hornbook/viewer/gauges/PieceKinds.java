package hornbook.viewer.gauges;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Part;
import hornbook.catalogue.entry.Supply;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** All kinds that can be asked for, by title; put in order once for as long as the knowledge is the same. */
public final class PieceKinds {
    private final Supplier<Catalogue> catalogue;
    private @Nullable Sorted sorted;

    private record Sorted(Catalogue of, List<PieceKind> kinds) {}

    public PieceKinds(Supplier<Catalogue> catalogue) {
        this.catalogue = catalogue;
    }

    /** Asked beside the window. */
    public synchronized List<PieceKind> all() {
        Catalogue now = catalogue.get();
        if (sorted == null || sorted.of() != now) {
            sorted = new Sorted(now, kinds(now));
        }
        return sorted.kinds();
    }

    private static List<PieceKind> kinds(Catalogue catalogue) {
        return Stream.concat(
                        catalogue.all(Part.class).values().stream().map(p -> new PieceKind(p.id(), p.title())),
                        catalogue.all(Supply.class).values().stream().map(s -> new PieceKind(s.id(), s.title())))
                .sorted(Comparator.comparing(PieceKind::title))
                .toList();
    }
}
