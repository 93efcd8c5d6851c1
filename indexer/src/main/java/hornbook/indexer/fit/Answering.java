package hornbook.indexer.fit;

import hornbook.catalogue.entry.Catalogue;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Lot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Puts what was found in order, and in words. */
final class Answering {
    private static final int REFUSED = 20;
    private final Asked asked;
    private final Trying trying;
    private final ShopFloor floor;
    private final Aims aims;
    private final Catalogue catalogue;
    private final PlanWords words;

    Answering(Asked asked, Trying trying, ShopFloor floor, Threads threads, Catalogue catalogue) {
        this.asked = asked;
        this.trying = trying;
        this.floor = floor;
        this.aims = new Aims(asked, threads);
        this.catalogue = catalogue;
        this.words = new PlanWords(
                asked, floor, new WithTool(aims, floor.rack(), new Charges(asked.model()), floor.minutes()), catalogue);
    }

    /** Goods to avoid come last, and of two that cost the same the one that nothing is known against comes first. */
    private Comparator<Plan> order() {
        return Comparator.comparing((Plan p) -> lot(p).filter(Lot::reserve).isEmpty())
                .thenComparing(p -> lot(p).filter(floor.condition()::avoided).isPresent())
                .thenComparingLong(p -> Math.round(p.total() * 1e6))
                .thenComparing(p -> !lot(p).map(floor.condition()::sound).orElse(true))
                .thenComparingInt(p -> p.end().steps.size())
                .thenComparing(p -> !p.end().piece.of().salvaged())
                .thenComparingInt(p -> -heap(p))
                .thenComparing(p -> p.end().piece.id());
    }

    FitAnswer answer() {
        List<FitPlan> plans =
                trying.plans.stream().sorted(order()).map(words::of).toList();
        List<Refused> refused = trying.refused.stream()
                .sorted(Comparator.comparingDouble(Trying.No::far)
                        .thenComparing(no -> no.piece().id()))
                .limit(REFUSED)
                .map(this::refused)
                .toList();
        return new FitAnswer(
                asked.kind().id(),
                asked.kind().title(),
                asked.shown(),
                plans,
                refused,
                plans.isEmpty() ? new Buying(asked, aims, floor.rack(), floor.minutes(), catalogue).lines() : List.of(),
                remarks(plans));
    }

    private Refused refused(Trying.No no) {
        Piece piece = no.piece();
        return new Refused(
                piece.id(),
                piece.lot().map(Lot::title).orElse("the piece in hand"),
                piece.lot().map(Lot::lies).orElse(null),
                piece.lot().map(lot -> floor.places().label(lot.lies())).orElse(null),
                no.why().reason(),
                no.why().words());
    }

    private List<String> remarks(List<FitPlan> plans) {
        List<String> remarks = new ArrayList<>();
        plans.stream()
                .skip(1)
                .filter(plan -> plan.withTool() != null
                        && plan.withTool().total() < plans.getFirst().total())
                .min(Comparator.comparingDouble(
                        plan -> Objects.requireNonNull(plan.withTool()).total()))
                .ifPresent(plan -> remarks.add(cheaper(plan, Objects.requireNonNull(plan.withTool()))));
        Set<String> unlisted = new TreeSet<>();
        trying.plans.forEach(plan -> plan.end().steps.stream()
                .filter(done -> floor.rack().unlisted(done.move()))
                .forEach(done -> unlisted.add(done.move().working().member())));
        unlisted.forEach(member -> remarks.add(
                "no list of members of the shop's " + member + " set: the one wanted is taken to be there"));
        return remarks;
    }

    private static String cheaper(FitPlan plan, CheaperWith with) {
        return plan.lot() + ", " + plan.title() + ", would be cheapest at " + Shown.number(with.total()) + " but for "
                + with.lacks();
    }

    private static Optional<Lot> lot(Plan plan) {
        return plan.end().piece.lot();
    }

    private static int heap(Plan plan) {
        return lot(plan)
                .map(lot -> switch (lot.count()) {
                    case Count.Exact(int pieces) -> pieces;
                    case Count.Rough rough ->
                        switch (rough) {
                            case FEW -> 3;
                            case SOME -> 12;
                            case PLENTY -> 30;
                        };
                })
                .orElse(0);
    }
}
