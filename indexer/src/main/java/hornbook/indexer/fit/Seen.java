package hornbook.indexer.fit;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Where a search has been, and for how much: what comes there again for no less leads to nothing better. */
final class Seen {
    private final Map<State, Spent> spent = new HashMap<>();

    /** All that what may come, and what it costs, depend on. */
    private record State(
            int at,
            Map<String, Value> changed,
            Map<String, Want> owed,
            Map<String, Double> leaves,
            Set<String> setUp,
            @Nullable String end,
            boolean reversible,
            double sawn) {}

    private record Spent(double minutes, int steps, double off) {
        boolean noMoreThan(Spent other) {
            if (Math.abs(minutes - other.minutes) > Formula.NOTHING) {
                return minutes < other.minutes;
            }
            return steps < other.steps || (steps == other.steps && off <= other.off);
        }
    }

    /** Notes that the search comes there; true where it has been there for no more. */
    boolean forLess(int at, Node node) {
        State state = new State(
                at,
                Map.copyOf(node.changed),
                Map.copyOf(node.owed),
                Map.copyOf(node.leaves),
                new TreeSet<>(node.setUp),
                node.end,
                node.reversible(),
                node.sawn);
        Spent now = new Spent(node.minutes, node.steps.size(), node.off);
        Spent before = spent.get(state);
        if (before != null && before.noMoreThan(now)) {
            return true;
        }
        spent.put(state, now);
        return false;
    }
}
