package hornbook.shared.stock;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;
import static java.util.stream.Collectors.toSet;

import hornbook.shared.shop.Cabinet;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Place;
import hornbook.shared.shop.ShopTool;
import hornbook.shared.store.Books;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Answers what the cabinets look like. */
public final class Furniture {
    private final Books books;

    public Furniture(Books books) {
        this.books = books;
    }

    /** Every cabinet with its drawers, in the order in which they were entered. */
    public List<CabinetPlan> plans() {
        Map<String, List<Lot>> lots = books.all(Lot.class).stream()
                .filter(lot -> lot.drawer() != null)
                .collect(groupingBy(Lot::lies));
        Set<String> withTools = books.all(ShopTool.class).stream()
                .map(ShopTool::drawer)
                .filter(Objects::nonNull)
                .collect(toSet());
        LocalDate today = books.today();
        Map<String, List<DrawerFront>> fronts = books.all(Drawer.class).stream()
                .sorted(Comparator.comparingInt(Drawer::row).thenComparingInt(Drawer::column))
                .collect(groupingBy(
                        Drawer::cabinet,
                        mapping(
                                drawer -> front(
                                        drawer,
                                        lots.getOrDefault(drawer.id(), List.of()),
                                        withTools.contains(drawer.id()),
                                        today),
                                toList())));
        return books.all(Cabinet.class).stream()
                .map(cabinet -> plan(cabinet, fronts.getOrDefault(cabinet.id(), List.of())))
                .toList();
    }

    /** Every place that is no drawer, in the order in which they were entered. */
    public List<PlaceFront> places() {
        Map<String, Long> lots = counted(books.all(Lot.class).stream().map(Lot::place));
        Map<String, Long> tools = counted(books.all(ShopTool.class).stream().map(ShopTool::place));
        return books.all(Place.class).stream()
                .map(place -> new PlaceFront(
                        place.id(),
                        place.name(),
                        place.kind(),
                        place.where(),
                        lots.getOrDefault(place.id(), 0L).intValue(),
                        tools.getOrDefault(place.id(), 0L).intValue()))
                .toList();
    }

    private static Map<String, Long> counted(Stream<@Nullable String> places) {
        return places.filter(Objects::nonNull).collect(groupingBy(Objects::requireNonNull, counting()));
    }

    private static DrawerFront front(Drawer drawer, List<Lot> lots, boolean tools, LocalDate today) {
        boolean empty = !tools && (lots.isEmpty() ? foundEmpty(drawer) : allUsedUp(lots));
        return new DrawerFront(
                drawer.id(),
                drawer.row(),
                drawer.column(),
                drawer.labelAsWritten(),
                drawer.contentsAsFound(),
                drawer.labelState(),
                lots.size(),
                empty,
                Stock.unsure(drawer, today),
                Stock.heed(drawer, today));
    }

    /** What is not worth a lot, as string or reeds, stands only in the words. */
    private static boolean foundEmpty(Drawer drawer) {
        String contents = drawer.contentsAsFound().strip();
        return contents.isEmpty() || contents.equalsIgnoreCase("empty");
    }

    private static boolean allUsedUp(List<Lot> lots) {
        return lots.stream().allMatch(lot -> lot.count().none());
    }

    private static CabinetPlan plan(Cabinet cabinet, List<DrawerFront> drawers) {
        return new CabinetPlan(
                cabinet.id(),
                cabinet.name(),
                cabinet.where(),
                cabinet.notes(),
                cabinet.rows(),
                cabinet.columns(),
                drawers);
    }
}
