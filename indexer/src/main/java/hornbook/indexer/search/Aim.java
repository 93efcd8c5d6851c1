package hornbook.indexer.search;

import hornbook.indexer.words.Cutter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What sort of thing a query is after, where it says so: a part by its name, or a horn and nothing else. */
final class Aim {
    /** Kinds that name horns. */
    static final Set<String> HORNS = Set.of("make", "model", "seller");

    /** Stock that meets less than that of the query is not what was asked for. */
    private static final double WORTH_IT = 0.6;
    /** Hits that meet nearly as much as the best of their sort. */
    private static final double AS_GOOD = 0.75;

    /** A letter or two begin many names. */
    private static final int ENOUGH = 3;

    private static final double JUST_ABOVE = 1.001;

    private final Plan plan;
    private final List<Unit> telling;
    private final Set<String> inFull;
    private final List<String> terms;

    Aim(Plan plan) {
        this.plan = plan;
        this.telling = plan.telling();
        this.inFull = plan.thingsInFull();
        this.terms = plan.terms();
    }

    /** @param order best first */
    List<Found> order(List<Found> order) {
        if (order.isEmpty() || plan.past()) {
            return order;
        }
        return order.stream().anyMatch(this::named) ? hornsFirst(order) : partsFirst(order);
    }

    /** Who types a make or model and nothing of it wants to know of the horn. */
    private List<Found> hornsFirst(List<Found> order) {
        double top = order.getFirst().score();
        double least = order.stream()
                .filter(this::named)
                .mapToDouble(Found::score)
                .min()
                .orElse(top);
        List<Found> result = new ArrayList<>();
        order.forEach(
                found -> result.add(named(found) ? found.scoring(JUST_ABOVE * top * found.score() / least) : found));
        result.sort(Found::order);
        return result;
    }

    /** Is it a horn whose name holds every word that tells something? */
    private boolean named(Found found) {
        if (!horn(found) || telling.stream().noneMatch(unit -> unit.said().length() >= ENOUGH)) {
            return false;
        }
        String name = " " + Cutter.joined(found.row().title());
        return telling.stream().allMatch(unit -> name.contains(" " + unit.said()));
    }

    /**
     * Who names a part and a make looks for the part: lots of it on hand come before what is known of the make. Where
     * the part is named in full, other lots of that make come after it too.
     */
    private List<Found> partsFirst(List<Found> order) {
        Set<String> things = plan.things();
        List<Found> lots = order.stream()
                .filter(found -> Order.open(found) && things.contains(Order.item(found)))
                .toList();
        if (lots.isEmpty()
                || lots.getFirst().score() < WORTH_IT * order.getFirst().score()) {
            return order;
        }
        double good = AS_GOOD * best(lots);
        double least = lots.stream()
                .mapToDouble(Found::score)
                .filter(score -> score >= good)
                .min()
                .orElse(good);
        List<Found> result = new ArrayList<>();
        order.forEach(found -> result.add(horn(found) || another(found) ? Order.notAbove(least, found) : found));
        result.sort(Found::order);
        return result;
    }

    private boolean another(Found found) {
        return !inFull.isEmpty()
                && Order.open(found)
                && !inFull.contains(Order.item(found))
                && terms.stream().noneMatch(Cutter.joined(found.row().title())::contains);
    }

    private static boolean horn(Found found) {
        return HORNS.contains(found.row().kind());
    }

    private static double best(List<Found> found) {
        return found.stream().mapToDouble(Found::score).max().orElse(0);
    }
}
