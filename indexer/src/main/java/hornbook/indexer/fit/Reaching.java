package hornbook.indexer.fit;

import hornbook.indexer.fit.Want.Between;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleBinaryOperator;

/** Reads from the limit, check and units of an operation what it can do to a size of a piece as it stands. */
final class Reaching {
    /** The least that is worth an operation, mm. */
    static final double HAIR = 0.0025;

    private final Aim aim;
    private final Minutes minutes;
    private final Looks looks;
    private final Map<Move, Map<Known, List<Way>>> known = new IdentityHashMap<>();

    /** One direction, on so many ends, holes or cuts. */
    record Way(boolean larger, int n, Limits limits) {}

    private record Known(Map<String, Value> others, Set<String> open) {}

    Reaching(Aim aim, Minutes minutes, Looks looks) {
        this.aim = aim;
        this.minutes = minutes;
        this.looks = looks;
    }

    /** @param open dimensions that may still be anything: what a check wants of these is taken to hold */
    List<Way> ways(Move move, Node node, Set<String> open) {
        Map<String, Value> others = looks.changed(looks.of(move), move.dimension(), node);
        return known.computeIfAbsent(move, _ -> new HashMap<>())
                .computeIfAbsent(new Known(others, open), _ -> read(move, node, open));
    }

    private List<Way> read(Move move, Node node, Set<String> open) {
        List<Way> ways = new ArrayList<>();
        for (boolean larger : new boolean[] {false, true}) {
            for (int n = 1; n <= move.most() && goes(move, larger); n++) {
                Limits limits = limits(move, node, larger, n, open);
                if (!limits.never()) {
                    ways.add(new Way(larger, n, limits));
                }
            }
        }
        return ways;
    }

    private static boolean goes(Move move, boolean larger) {
        return move.sets()
                ? larger || !"larger".equals(move.working().only())
                : larger ? move.makesLarger() : move.makesSmaller();
    }

    private Limits limits(Move move, Node node, boolean larger, int n, Set<String> open) {
        Double most = move.operation().maxAmount();
        Limits limits = most == null || move.sets() ? Limits.NONE : Limits.NONE.upTo(most * n);
        for (Comparison comparison : move.comparisons()) {
            if (Collections.disjoint(looks.of(comparison, move), open)) {
                DoubleBinaryOperator line = (to, amount) -> comparison.difference(
                        aim.sight(node, move, Value.of(larger ? to - amount : to + amount), Value.of(to), n));
                Limits before = limits;
                limits = Straight.of(line)
                        .map(straight -> before.holding(comparison.relation(), straight))
                        .orElse(before);
            }
        }
        return limits;
    }

    /** Whether what it takes, or whether it may be done, hangs on one of these. */
    boolean looksAt(Move move, Set<String> dimensions) {
        return !Collections.disjoint(looks.of(move), dimensions);
    }

    /** @param far further than this nothing is worked, mm */
    List<Reach> of(Move move, Node node, Set<String> open, double far) {
        List<Reach> all = new ArrayList<>();
        double done = 0;
        boolean larger = false;
        for (Way way : ways(move, node, open)) {
            done = way.larger() == larger ? done : 0;
            larger = way.larger();
            Between amount = way.limits().amount();
            double least = Math.max(HAIR, Math.max(done, amount.low()));
            done = amount.high();
            all.add(new Reach(
                    List.of(way.limits().end()), strokes(move, node, way, least, Math.min(amount.high(), far))));
        }
        return all;
    }

    private List<Stroke> strokes(Move move, Node node, Way way, double least, double most) {
        List<Stroke> strokes = new ArrayList<>();
        double begun = least;
        for (double end : ends(move, node, least, most)) {
            double units = move.units().value(sight(move, node, end, way.n()));
            strokes.add(new Stroke(way.larger(), begun, end, minutes.of(move, false, units, 1)));
            begun = end;
        }
        return strokes;
    }

    /** Amounts after which the next unit of work begins, and the most. */
    private Set<Double> ends(Move move, Node node, double least, double most) {
        TreeSet<Double> ends = new TreeSet<>();
        List<Formula> jumps = new ArrayList<>();
        move.units().jumps(jumps);
        for (Formula jump : jumps) {
            Straight line = Straight.of((_, amount) -> jump.value(sight(move, node, amount, 1)))
                    .orElse(null);
            if (line != null && line.byAmount() > 0) {
                for (int whole = 1; whole < line.byAmount() * most; whole++) {
                    ends.add((whole - line.constant()) / line.byAmount());
                }
            }
        }
        ends.removeIf(end -> end <= least || end >= most);
        if (least <= most + Formula.NOTHING) {
            ends.add(Math.max(least, most));
        }
        return ends;
    }

    private Sight sight(Move move, Node node, double amount, int n) {
        // Only the amount between the two is looked at.
        return aim.sight(node, move, Value.of(0), Value.of(amount), n);
    }
}
