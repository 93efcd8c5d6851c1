package hornbook.indexer.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** A piece part of the way through the work. Not changed once it stands in the search. */
final class Node {
    final Piece piece;
    final Map<String, Value> changed;
    /** What was lost on the way and has to be put back. */
    final Map<String, Want> owed;

    /** Stock that the next operation on a dimension has to take at least: the last one is not surer than that, mm. */
    final Map<String, Double> leaves;

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
        leaves = Map.of();
        steps = List.of();
        setUp = Set.of();
    }

    private Node(Node before, Map<String, Value> changed) {
        piece = before.piece;
        this.changed = changed;
        owed = new HashMap<>(before.owed);
        leaves = new HashMap<>(before.leaves);
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

    /** The same with another value, to look ahead. */
    Node with(String dimension, Value value) {
        Map<String, Value> other = new HashMap<>(changed);
        other.put(dimension, value);
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

    /** Notes an operation in a copy that does not stand in the search yet. */
    void done(Move move, @Nullable Value from, Value to, Permit.Given given, Minutes minutes, Aim aim, int pieces) {
        Sight sight = given.sight();
        double spent = minutes.of(move, setUp.add(move.id()), move.units().value(sight), pieces);
        changed.put(move.dimension(), to);
        leaves.put(move.dimension(), move.leaves());
        this.minutes += spent;
        String taken = move.takesEnd() ? end : null;
        steps.add(new Done(move, from, to, given.n(), spent, new TreeSet<>(given.asks()), taken, sight));
        if (move.takesEnd() && move.working().leaves() != null) {
            sawn += sight.value("amt");
        }
        if (aim.want(this, move.dimension()).orElse(null) instanceof Want.Between between
                && to instanceof Value.Amount(double mm, double _)) {
            off += Math.abs(mm - between.middle());
        }
        move.working().marks().forEach((dimension, word) -> mark(dimension, word, aim));
        move.working().grows().forEach((word, formula) -> grow(word, FormulaReader.formula(formula), sight));
    }

    private void mark(String dimension, String word, Aim aim) {
        Value was = value(dimension);
        changed.put(dimension, new Value.Word(word));
        if (was != null && !aim.wants().containsKey(dimension)) {
            owed.put(dimension, new Want.Among(List.of(was.shown())));
        }
    }

    /** Half to all of the most it can grow by. */
    private void grow(String word, Formula formula, Sight sight) {
        String works = piece.craft().fitting().works().get(word);
        double most = formula.value(sight);
        if (works != null && value(works) instanceof Value.Amount(double mm, double doubt) && !Double.isNaN(most)) {
            changed.put(works, new Value.Amount(mm + 0.75 * most, doubt + 0.25 * most));
        }
    }
}
