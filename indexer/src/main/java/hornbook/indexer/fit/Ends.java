package hornbook.indexer.fit;

import hornbook.indexer.fit.Want.Between;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import org.jspecify.annotations.Nullable;

/**
 * Where an operation can sensibly end: at the middle or an end of what is wanted, drawn in by its accuracy; so far from
 * it that the next operation on the same dimension can finish; at the bound of a later operation's check; at its own
 * limit. Finitely many, so the search over them is exact.
 */
final class Ends {
    private final Aim aim;
    private final List<Move> moves;
    private final Rack rack;

    Ends(Aim aim, List<Move> moves, Rack rack) {
        this.aim = aim;
        this.moves = moves;
        this.rack = rack;
    }

    List<Value> of(int at, Node node, @Nullable Value from) {
        Move move = moves.get(at);
        Optional<Want> want = aim.want(node, move.dimension());
        if (move.working().reaches() != null && from instanceof Value.Amount) {
            Formula reaches = FormulaReader.formula(move.working().reaches());
            return List.of(Value.of(reaches.value(aim.sight(node, move, from, from, 1))));
        }
        if (want.isPresent() && want.get() instanceof Want.Among(var words)) {
            return aim.unmet(node, move.dimension()) ? given(move, node, aim, words) : List.of();
        }
        if (!move.working().gives().isEmpty()) {
            return want.isPresent() ? numbers(move, want.get(), from) : List.of();
        }
        List<Double> ends = new ArrayList<>();
        boolean unmet = aim.unmet(node, move.dimension());
        if (want.isPresent() && want.get() instanceof Between between && unmet) {
            sizes(at, node, between, from, ends);
        }
        if (from instanceof Value.Amount(double mm, double _)) {
            ends.addAll(new Bounds(aim, moves, node).later(at, mm));
        }
        DoublePredicate allowed = direction(move, from);
        return ends.stream()
                .filter(end -> allowed.test(end))
                .map(end -> new Value.Amount(end, move.accuracy()))
                .distinct()
                .map(Value.class::cast)
                .toList();
    }

    /** The words, of those wanted, that an operation can bring about. */
    static List<Value> given(Move move, Node node, Aim aim, List<String> words) {
        List<String> gives = move.working().gives().stream()
                .map(word -> word.startsWith("=") ? held(node, aim, word.substring(1)) : word)
                .toList();
        return words.stream()
                .filter(word -> gives.isEmpty() || gives.stream().anyMatch(word::equalsIgnoreCase))
                .map(word -> (Value) new Value.Word(word))
                .toList();
    }

    /** Counts it brings about: a slot, no rivet. */
    static List<Value> numbers(Move move, Want want, @Nullable Value from) {
        return move.working().gives().stream()
                .map(text -> Pieces.value(text, name -> null))
                .filter(value -> want.met(value) && !value.equals(from))
                .toList();
    }

    private static String held(Node node, Aim aim, String name) {
        Value value = node.value(name) == null ? aim.facts().get(name) : node.value(name);
        return value == null ? "" : value.shown();
    }

    private void sizes(int at, Node node, Between want, @Nullable Value from, List<Double> into) {
        Move move = moves.get(at);
        DoublePredicate may = direction(move, from)
                .and(end -> new Permit(aim, Rack.FULL)
                        .given(move, node, from, new Value.Amount(end, move.accuracy()))
                        .isPresent());
        List<Double> last = last(move, want);
        List<Double> passing = passing(at, node, want, from);
        // Where its minutes are the same wherever it ends, the first that can be reached is the one to aim at.
        into.addAll(move.unitsByAmount() ? last : first(last, may));
        into.addAll(move.working().leaves() == null ? passing : first(passing, may));
        if (move.working().member() != null) {
            rack.sizes(move).stream()
                    .filter(size ->
                            new Want.Between(want.low(), want.high()).met(new Value.Amount(size, move.accuracy())))
                    .forEach(into::add);
        }
    }

    private static List<Double> first(List<Double> ends, DoublePredicate may) {
        return ends.stream().filter(may::test).limit(1).toList();
    }

    /** Ends that leave the dimension as wanted. */
    private static List<Double> last(Move move, Between want) {
        double low = want.low() + move.accuracy();
        double high = want.high() - move.accuracy();
        return low <= high + Formula.NOTHING ? List.of(want.middle(), high, low) : List.of();
    }

    /** Ends that leave the rest to a later operation on the same dimension. */
    private List<Double> passing(int at, Node node, Between want, @Nullable Value from) {
        List<Double> ends = new ArrayList<>();
        Move move = moves.get(at);
        if (!(from instanceof Value.Amount(double mm, double _))) {
            return ends;
        }
        Bounds bounds = new Bounds(aim, moves, node);
        for (Move next : moves.subList(at + 1, moves.size())) {
            if (next.dimension().equals(move.dimension())) {
                for (double end : last(next, want)) {
                    double side = Math.signum(mm - end);
                    ends.add(end + side * move.leaves());
                    ends.add(end - side * move.leaves());
                    most(next).ifPresent(most -> ends.addAll(List.of(end + side * most, end - side * most)));
                    ends.addAll(bounds.reaches(next, mm, end));
                    ends.addAll(bounds.reaches(next, 2 * end - mm, end));
                }
            }
        }
        if (!ends.isEmpty()) {
            ends.add(want.low() + move.accuracy());
            ends.add(want.high() - move.accuracy());
            most(move).ifPresent(most -> ends.add(mm - Math.signum(mm - want.middle()) * most));
            ends.addAll(bounds.limits(move, mm, want.middle()));
        }
        return ends;
    }

    private static OptionalDouble most(Move move) {
        Double most = move.operation().maxAmount();
        return most == null ? OptionalDouble.empty() : OptionalDouble.of(most * move.most());
    }

    private static DoublePredicate direction(Move move, @Nullable Value from) {
        if (!(from instanceof Value.Amount(double mm, double _))) {
            return end -> move.sets() && end > 0;
        }
        if (move.sets()) {
            boolean larger = "larger".equals(move.working().only());
            return end -> end > 0 && (larger ? end > mm + Formula.NOTHING : Math.abs(end - mm) > Formula.NOTHING);
        }
        return end -> end > 0
                && (end < mm - Formula.NOTHING
                        ? move.makesSmaller()
                        : end > mm + Formula.NOTHING && move.makesLarger());
    }
}
