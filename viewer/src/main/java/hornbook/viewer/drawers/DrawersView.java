package hornbook.viewer.drawers;

import hornbook.shared.stock.CabinetPlan;
import hornbook.shared.stock.DrawerFront;
import hornbook.shared.stock.PlaceFront;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What the screen shows at one moment.
 *
 * @param shop the furniture as it stands
 * @param chosen id of the cabinet in view, or {@link #PLACES}; empty while there is none
 * @param lit ids of the drawers that hold what was looked for
 * @param open id of the drawer or place that is pulled out
 * @param looking whether the cabinet is being looked through, drawer by drawer
 * @param trouble what went wrong, or what there is to be said, in a sentence
 */
record DrawersView(
        Shop shop,
        String chosen,
        Set<String> lit,
        @Nullable String open,
        boolean looking,
        @Nullable String trouble) {
    /** Stands for the places that are no drawer. */
    static final String PLACES = "places";

    /** Stands for the tools. */
    static final String TOOLS = "tools";

    static final DrawersView NOTHING = new DrawersView(new Shop(List.of(), List.of()), "", Set.of(), null, false, null);

    /** The furniture, and the places that are no drawer. */
    record Shop(List<CabinetPlan> cabinets, List<PlaceFront> places) {}

    /** Whether the books have answered: until then nobody knows whether the shop is bare. */
    boolean known() {
        return shop != NOTHING.shop;
    }

    List<CabinetPlan> cabinets() {
        return shop.cabinets();
    }

    Optional<CabinetPlan> cabinet() {
        return cabinets().stream().filter(plan -> plan.id().equals(chosen)).findFirst();
    }

    /** How many drawers of a cabinet are lit. */
    long litIn(CabinetPlan plan) {
        return plan.drawers().stream()
                .map(DrawerFront::id)
                .filter(lit::contains)
                .count();
    }

    private Optional<String> holding(String place) {
        return cabinets().stream()
                .filter(plan -> plan.drawers().stream().anyMatch(d -> d.id().equals(place)))
                .map(CabinetPlan::id)
                .findFirst()
                .or(() -> shop.places().stream().anyMatch(p -> p.id().equals(place))
                        ? Optional.of(PLACES)
                        : Optional.empty());
    }

    /** The drawer that comes after one in the walk through its cabinet, row by row. */
    Optional<String> after(String drawer) {
        List<String> walk = cabinet().stream()
                .flatMap(plan -> plan.drawers().stream())
                .map(DrawerFront::id)
                .toList();
        int next = walk.indexOf(drawer) + 1;
        return next < walk.size() ? Optional.of(walk.get(next)) : Optional.empty();
    }

    DrawersView with(Shop now) {
        boolean still = Set.of(PLACES, TOOLS).contains(chosen)
                || now.cabinets().stream().anyMatch(plan -> plan.id().equals(chosen));
        String first = now.cabinets().isEmpty() ? "" : now.cabinets().getFirst().id();
        DrawersView fresh = new DrawersView(now, still ? chosen : first, lit, open, looking, trouble);
        return open == null || chosen.equals(TOOLS)
                ? fresh
                : new DrawersView(now, fresh.holding(open).orElse(fresh.chosen), lit, open, looking, trouble);
    }

    DrawersView choosing(String cabinet) {
        return new DrawersView(shop, cabinet, lit, null, false, null);
    }

    DrawersView lighting(Set<String> drawers) {
        return new DrawersView(shop, chosen, Set.copyOf(drawers), open, looking, trouble);
    }

    DrawersView opening(String drawer) {
        return new DrawersView(shop, holding(drawer).orElse(chosen), lit, drawer, looking, null);
    }

    DrawersView closed() {
        return new DrawersView(shop, chosen, lit, null, false, null);
    }

    DrawersView looking(boolean yes) {
        return new DrawersView(shop, chosen, lit, open, yes, null);
    }

    DrawersView troubled(String what) {
        return new DrawersView(shop, chosen, lit, open, looking, what);
    }
}
