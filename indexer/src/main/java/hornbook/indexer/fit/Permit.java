package hornbook.indexer.fit;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Whether an operation may be put to a piece. */
record Permit(Aim aim, Rack rack) {
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
        for (int n = 1; n <= move.most(); n++) {
            Sight sight = aim.sight(node, move, from, to, n);
            if (within(move, sight, n) && holds(move, sight)) {
                return rack.lacks(move, to, sight).isPresent()
                        ? Optional.empty()
                        : Optional.of(new Given(n, asks(move, sight), sight));
            }
        }
        return Optional.empty();
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
