package hornbook.indexer.fit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a piece is to become.
 *
 * @param wants by dimension, as asked and as such a piece always has to be
 * @param facts what belongs to the horn
 * @param count pieces wanted
 */
record Aim(Map<String, Want> wants, Map<String, Value> facts, int count, Threads threads) {
    Aim {
        wants = Collections.unmodifiableMap(new LinkedHashMap<>(wants));
        facts = Map.copyOf(facts);
    }

    Optional<Want> want(Node node, String dimension) {
        Want owed = node.owed.get(dimension);
        return Optional.ofNullable(owed == null ? wants.get(dimension) : owed);
    }

    boolean unmet(Node node, String dimension) {
        Optional<Want> want = want(node, dimension);
        Value value = node.value(dimension);
        return want.isPresent() && (value == null || !want.get().met(value));
    }

    /** The thread that is wanted where it is one, otherwise the one the piece has. */
    Optional<Threads.Form> thread(Node node) {
        Want want = wants.get("thread");
        if (want instanceof Want.Among(var words) && words.size() == 1) {
            return threads.form(words.getFirst());
        }
        return node.value("thread") instanceof Value.Word(String text) ? threads.form(text) : Optional.empty();
    }

    Sight sight(Node node, Move move, @Nullable Value from, @Nullable Value to, int n) {
        Optional<Threads.Form> thread = move.dimension().equals("thread") && to instanceof Value.Word(String text)
                ? threads.form(text)
                : thread(node);
        return new Sight(node, move, facts, thread, mm(from), mm(to), n);
    }

    private static double mm(@Nullable Value value) {
        return value instanceof Value.Amount(double mm, double _) ? mm : Double.NaN;
    }
}
