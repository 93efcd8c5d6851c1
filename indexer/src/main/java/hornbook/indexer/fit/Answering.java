package hornbook.indexer.fit;

import hornbook.catalogue.entry.Catalogue;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Lot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Puts what was found in order, and in words. */
final class Answering {
    private static final int REFUSED = 20;
    private static final Comparator<Plan> ORDER = Comparator.comparing((Plan p) -> !reserve(p))
            .thenComparingLong(p -> Math.round(p.total() * 1e6))
            .thenComparingInt(p -> p.end().steps.size())
            .thenComparing(p -> !p.end().piece.of().salvaged())
            .thenComparingInt(p -> -heap(p))
            .thenComparing(p -> p.end().piece.id());

    private final Asked asked;
    private final Trying trying;
    private final ShopRack rack;
    private final Places places;
    private final Minutes minutes;
    private final Threads threads;
    private final Catalogue catalogue;

    Answering(
            Asked asked,
            Trying trying,
            ShopRack rack,
            Places places,
            Minutes minutes,
            Threads threads,
            Catalogue catalogue) {
        this.asked = asked;
        this.trying = trying;
        this.rack = rack;
        this.places = places;
        this.minutes = minutes;
        this.threads = threads;
        this.catalogue = catalogue;
    }

    FitAnswer answer() {
        PlanWords words = new PlanWords(asked, rack, places, minutes, catalogue);
        List<FitPlan> plans = trying.plans.stream().sorted(ORDER).map(words::of).toList();
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
                plans.isEmpty()
                        ? new Buying(asked, new Aims(asked, threads), rack, minutes, catalogue).lines()
                        : List.of(),
                remarks());
    }

    private Refused refused(Trying.No no) {
        Piece piece = no.piece();
        return new Refused(
                piece.id(),
                piece.lot().map(Lot::title).orElse("the piece in hand"),
                piece.lot().map(Lot::lies).orElse(null),
                piece.lot().map(lot -> places.label(lot.lies())).orElse(null),
                no.why().reason(),
                no.why().words());
    }

    private List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        Set<String> unlisted = new TreeSet<>();
        trying.plans.forEach(plan -> plan.end().steps.stream()
                .filter(done -> rack.unlisted(done.move()))
                .forEach(done -> unlisted.add(done.move().working().member())));
        unlisted.forEach(member -> remarks.add(
                "no list of members of the shop's " + member + " set: the one wanted is taken to be there"));
        return remarks;
    }

    private static boolean reserve(Plan plan) {
        return plan.end().piece.lot().filter(Lot::reserve).isPresent();
    }

    private static int heap(Plan plan) {
        return plan.end()
                .piece
                .lot()
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
