package hornbook.indexer.fit;

import hornbook.indexer.fit.Want.Between;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Where an operation on a size can sensibly end, wherever it begins: as wanted, at the bound of a check, and from where
 * a later operation on the same size can just, or in so many units of work, go on to where that one can sensibly end.
 */
final class Targets {
    /** The least that is worth an operation, mm. */
    static final double HAIR = 0.005;
    /** Ends nearer than this are one, mm. */
    private static final double SAME = 1e-6;

    private final Aim aim;
    private final List<Move> moves;
    private final Map<Asked, List<Double>> known = new HashMap<>();

    /** All that they depend on but where the operation begins. */
    private record Asked(int at, Map<String, Value> others, Map<String, Want> owed) {}

    Targets(Aim aim, List<Move> moves) {
        this.aim = aim;
        this.moves = moves;
    }

    /**
     * Ends, mm.
     *
     * @param at the operation's place in the order of work
     * @param like a size of the piece that is worked, mm
     */
    List<Double> of(int at, Node node, @Nullable Want want, double like) {
        Map<String, Value> others = new HashMap<>(node.changed);
        others.remove(moves.get(at).dimension());
        Asked asked = new Asked(at, others, Map.copyOf(node.owed));
        List<Double> before = known.get(asked);
        if (before == null) {
            before = anew(at, node, want, like);
            known.put(asked, before);
        }
        return before;
    }

    private List<Double> anew(int at, Node node, @Nullable Want want, double like) {
        Move move = moves.get(at);
        List<Double> ends = new ArrayList<>();
        if (want instanceof Between between) {
            ends.addAll(last(move, between));
        }
        Bounds bounds = new Bounds(aim, moves, node);
        List<Double> checked = bounds.later(at, like);
        ends.addAll(checked);
        ends.addAll(bounds.own(move, like));
        Zones zones = zones(move, node, want, checked);
        ends.addAll(zones.edges());
        for (int later = at + 1; later < moves.size(); later++) {
            Move next = moves.get(later);
            if (next.dimension().equals(move.dimension()) && !next.sets()) {
                Amounts amounts = Amounts.of(next, node, aim);
                for (double end : of(later, node, want, like)) {
                    for (double amount : amounts.upTo(zones.widest(), move.leaves())) {
                        if (next.makesSmaller()) {
                            ends.add(end + amount);
                        }
                        if (next.makesLarger()) {
                            ends.add(end - amount);
                        }
                    }
                }
            }
        }
        return apart(ends).stream().filter(zones::hold).toList();
    }

    private Zones zones(Move of, Node node, @Nullable Want want, List<Double> checked) {
        double past = moves.stream()
                .filter(move -> move.dimension().equals(of.dimension()))
                .mapToDouble(move -> move.leaves() + Amounts.of(move, node, aim).least() + HAIR)
                .sum();
        List<Between> all = new ArrayList<>();
        checked.forEach(bound -> all.add(new Between(bound - past, bound + past)));
        if (want instanceof Between(double low, double high)) {
            all.add(new Between(low - past, high + past));
        }
        return new Zones(all);
    }

    /** Ends that leave the dimension as wanted. */
    static List<Double> last(Move move, Between want) {
        double low = want.low() + move.accuracy();
        double high = want.high() - move.accuracy();
        return low <= high + Formula.NOTHING ? List.of(want.middle(), high, low) : List.of();
    }

    /** Without those that are the same but for rounding, the first kept. */
    static List<Double> apart(List<Double> ends) {
        Set<Long> seen = new HashSet<>();
        return ends.stream().filter(end -> seen.add(Math.round(end / SAME))).toList();
    }
}
