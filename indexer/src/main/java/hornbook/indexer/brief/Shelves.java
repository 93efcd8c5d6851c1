package hornbook.indexer.brief;

import hornbook.shared.shop.Count;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Place;
import hornbook.shared.shop.ShopTool;
import hornbook.shared.store.Books;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What the shop has, in the order in which a hand would take it: what fits nearest, is whole, lies loose and is measured,
 * first.
 */
final class Shelves {
    private static final Pattern HARMED =
            Pattern.compile("\\b(torn|bent|cracked|broken|chipped|stub|rusty|worn out|perished|spoiled)\\b");

    private final Likely likely;
    private final List<Lot> lots;
    private final Map<String, ShopTool> tools = new HashMap<>();
    private final Map<String, String> labels = new HashMap<>();
    private final Set<String> partsHorns = new HashSet<>();

    /** How near a lot is to the horn, nearest first. */
    enum Near {
        MODEL,
        MAKE,
        ANY,
        OTHER_MAKE
    }

    Shelves(Books books, Likely likely, boolean reserve) {
        this.likely = likely;
        this.lots = books.all(Lot.class).stream()
                .filter(l -> !l.keepsake() && (reserve || !l.reserve()))
                .toList();
        books.all(ShopTool.class).forEach(t -> tools.put(t.id(), t));
        books.all(Drawer.class).forEach(d -> labels.put(d.id(), d.labelAsWritten()));
        for (Place place : books.all(Place.class)) {
            labels.put(place.id(), place.name());
            if (place.model() != null) {
                partsHorns.add(place.id());
            }
        }
    }

    /** Lots of a kind, best first; what there is none of comes last. */
    List<Lot> lots(String item) {
        return lots.stream().filter(l -> l.item().equals(item)).sorted(order()).toList();
    }

    /** Lots that name a likely model. */
    List<Lot> spares() {
        return lots.stream()
                .filter(l -> near(l) == Near.MODEL && !l.count().none() && !harmed(l))
                .sorted(order())
                .toList();
    }

    private Comparator<Lot> order() {
        return Comparator.comparing((Lot l) -> l.count().none())
                .thenComparing(this::near)
                .thenComparing(Shelves::harmed)
                .thenComparing(l -> partsHorns.contains(l.lies()))
                .thenComparing(l -> l.dimensions().isEmpty())
                .thenComparing(l -> -pieces(l.count()))
                .thenComparing(Lot::id);
    }

    Near near(Lot lot) {
        if (lot.fitsModels().stream().anyMatch(likely::modelCounts)) {
            return Near.MODEL;
        }
        boolean make = lot.fitsMakes().stream().anyMatch(likely::makeCounts);
        if (lot.fitsModels().isEmpty() && make) {
            return Near.MAKE;
        }
        return lot.fitsModels().isEmpty() && lot.fitsMakes().isEmpty() ? Near.ANY : Near.OTHER_MAKE;
    }

    static boolean harmed(Lot lot) {
        return HARMED.matcher(lot.title()).find() || HARMED.matcher(lot.note()).find();
    }

    private static int pieces(Count count) {
        return switch (count) {
            case Count.Exact(int pieces) -> pieces;
            case Count.Rough rough ->
                switch (rough) {
                    case FEW -> 3;
                    case SOME -> 12;
                    case PLENTY -> 30;
                };
        };
    }

    Optional<ShopTool> tool(String id) {
        return Optional.ofNullable(tools.get(id));
    }

    String label(String place) {
        return labels.getOrDefault(place, "");
    }
}
