package hornbook.indexer.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A piece part of the way through the work. Not changed once it stands in the search. */
final class Node {
    final Piece piece;
    final Map<String, Value> changed;
    /** What was lost on the way and has to be put back. */
    final Map<String, Want> owed;

    final List<Done> steps;
    final Set<String> setUp;
    double minutes;
    /** How far ends lie from the middle of what is wanted: breaks ties toward the safer end. */
    double off;
    /** Length sawn off, mm. */
    double sawn;

    @Nullable
    String end;

    /** One operation done. */
    record Done(
            Move move,
            @Nullable Value from,
            Value to,
            int n,
            double minutes,
            Set<String> asks,
            @Nullable String end,
            Sight sight) {}

    Node(Piece piece) {
        this.piece = piece;
        changed = Map.of();
        owed = Map.of();
        steps = List.of();
        setUp = Set.of();
    }

    private Node(Node before, Map<String, Value> changed) {
        piece = before.piece;
        this.changed = changed;
        owed = new HashMap<>(before.owed);
        steps = new ArrayList<>(before.steps);
        setUp = new HashSet<>(before.setUp);
        minutes = before.minutes;
        off = before.off;
        sawn = before.sawn;
        end = before.end;
    }

    /** A copy to be filled before it stands in the search. */
    Node copy() {
        return new Node(this, new HashMap<>(changed));
    }

    /** The same with other values, to look ahead. */
    Node with(Map<String, Value> other) {
        return new Node(this, other);
    }

    @Nullable
    Value value(String dimension) {
        Value now = changed.get(dimension);
        if (now != null) {
            return now;
        }
        String other = piece.has().containsKey(dimension) ? null : piece.like().get(dimension);
        return other == null ? piece.has().get(dimension) : value(other);
    }

    /** Whether nothing done so far is for good. */
    boolean reversible() {
        return steps.stream().allMatch(done -> done.move().operation().reversible());
    }
}
