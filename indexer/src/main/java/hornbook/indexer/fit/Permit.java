package hornbook.indexer.fit;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Whether an operation may be put to a piece. */
final class Permit {
    private final Aim aim;
    private final Rack rack;
    private boolean lacked;

    Permit(Aim aim, Rack rack) {
        this.aim = aim;
        this.rack = rack;
    }

    /** Whether something was refused for want of a tool alone. */
    boolean lacked() {
        return lacked;
    }

    /**
     * It may.
     *
     * @param n the fewest ends, holes or cuts with which it may
     * @param asks names that a person has to answer for
     */
    record Given(int n, Set<String> asks, Sight sight) {}

    /** A thread is never cut over another: some operations begin only from certain words. */
    boolean starts(Move move, @Nullable Value from) {
        return move.working().starts().isEmpty()
                || (from != null && move.working().starts().contains(from.shown()));
    }

    Optional<Given> given(Move move, Node node, @Nullable Value from, Value to) {
        if (!enoughLeft(move, node, from, to)) {
            return Optional.empty();
        }
        for (int n = 1; n <= move.most(); n++) {
            Sight sight = aim.sight(node, move, from, to, n);
            if (within(move, sight, n) && holds(move, sight)) {
                if (rack.lacks(move, to, sight).isPresent()) {
                    lacked = true;
                    return Optional.empty();
                }
                return Optional.of(new Given(n, asks(move, sight), sight));
            }
        }
        return Optional.empty();
    }

    /** What is no surer than by some stock is not worked by less. */
    private static boolean enoughLeft(Move move, Node node, @Nullable Value from, Value to) {
        return move.sets()
                || !(from instanceof Value.Amount(double begun, double _)
                        && to instanceof Value.Amount(double ended, double _))
                || Math.abs(ended - begun) >= node.leaves.getOrDefault(move.dimension(), 0.0) - Formula.NOTHING;
    }

    /** By its own limit; setting has none but its check. */
    static boolean within(Move move, Sight sight, int n) {
        Double most = move.operation().maxAmount();
        double amount = sight.value("amt");
        return most == null || move.sets() || Double.isNaN(amount) || amount <= most * n + Formula.NOTHING;
    }

    private static boolean holds(Move move, Sight sight) {
        return move.check().broken(sight).isEmpty()
                && move.whenKnown().flatMap(check -> check.broken(sight)).isEmpty();
    }

    private static Set<String> asks(Move move, Sight sight) {
        Set<String> asks = new TreeSet<>(move.check().unknown(sight));
        move.units().names().stream()
                .filter(name -> Double.isNaN(sight.value(name)))
                .forEach(asks::add);
        return asks;
    }
}
