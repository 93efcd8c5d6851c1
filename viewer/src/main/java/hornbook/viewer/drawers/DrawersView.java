package hornbook.viewer.drawers;

import hornbook.shared.stock.CabinetPlan;
import hornbook.shared.stock.DrawerCard;
import hornbook.shared.stock.DrawerFront;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What the screen shows at one moment.
 *
 * @param chosen id of the cabinet in view; empty while there is none
 * @param lit ids of the drawers that hold what was looked for
 * @param open the drawer that is pulled out
 * @param trouble what went wrong, in a sentence
 */
public record DrawersView(
        List<CabinetPlan> cabinets,
        String chosen,
        Set<String> lit,
        @Nullable DrawerCard open,
        @Nullable String trouble) {

    static final DrawersView NOTHING = new DrawersView(List.of(), "", Set.of(), null, null);

    Optional<CabinetPlan> cabinet() {
        return cabinets.stream().filter(plan -> plan.id().equals(chosen)).findFirst();
    }

    /** How many drawers of a cabinet are lit. */
    long litIn(CabinetPlan plan) {
        return plan.drawers().stream()
                .map(DrawerFront::id)
                .filter(lit::contains)
                .count();
    }

    Optional<CabinetPlan> cabinetOf(String drawer) {
        return cabinets.stream()
                .filter(plan -> plan.drawers().stream().anyMatch(d -> d.id().equals(drawer)))
                .findFirst();
    }

    DrawersView with(List<CabinetPlan> plans) {
        boolean still = plans.stream().anyMatch(plan -> plan.id().equals(chosen));
        String first = plans.isEmpty() ? "" : plans.getFirst().id();
        return new DrawersView(plans, still ? chosen : first, lit, open, null);
    }

    DrawersView choosing(String cabinet) {
        return new DrawersView(cabinets, cabinet, lit, null, null);
    }

    DrawersView lighting(Set<String> drawers) {
        return new DrawersView(cabinets, chosen, Set.copyOf(drawers), open, trouble);
    }

    DrawersView opening(DrawerCard card) {
        String cabinet = cabinetOf(card.id()).map(CabinetPlan::id).orElse(chosen);
        return new DrawersView(cabinets, cabinet, lit, card, null);
    }

    DrawersView closed() {
        return new DrawersView(cabinets, chosen, lit, null, null);
    }

    DrawersView troubled(String what) {
        return new DrawersView(cabinets, chosen, lit, open, what);
    }
}
