package hornbook.indexer.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/** Where a dimension has to end so that a later operation's check just holds. */
final class Bounds {
    private final Aim aim;
    private final List<Move> moves;
    private final Node node;

    Bounds(Aim aim, List<Move> moves, Node node) {
        this.aim = aim;
        this.moves = moves;
        this.node = node;
    }

    /** Bounds on the dimension of the move at that place, set by moves after it that bring about a word. */
    List<Double> later(int at, double from) {
        String dimension = moves.get(at).dimension();
        List<Double> bounds = new ArrayList<>();
        for (Move next : moves.subList(at + 1, moves.size())) {
            if (!next.dimension().equals(dimension) && wanted(next)) {
                for (Comparison comparison : next.check().all()) {
                    bound(comparison, next, dimension, from, bounds);
                }
            }
        }
        return bounds;
    }

    private boolean wanted(Move next) {
        return aim.unmet(node, next.dimension())
                && aim.want(node, next.dimension()).orElseThrow() instanceof Want.Among;
    }

    private void bound(Comparison comparison, Move next, String dimension, double from, List<Double> into) {
        root(mm -> difference(comparison, next, dimension, mm), from, from / 2).ifPresent(into::add);
    }

    private double difference(Comparison comparison, Move next, String dimension, double mm) {
        Map<String, Value> changed = new HashMap<>(node.changed);
        changed.put(dimension, Value.of(mm));
        return comparison.difference(aim.sight(node.with(changed), next, null, null, 1));
    }

    /** As far as an operation may go from there toward an end, by its own check. */
    List<Double> limits(Move move, double from, double end) {
        return move.check().all().stream()
                .flatMap(comparison -> root(
                                to -> comparison.difference(
                                        aim.sight(node, move, Value.of(from), Value.of(to), move.most())),
                                from + 0.7 * (end - from),
                                from + 0.3 * (end - from))
                        .stream()
                        .boxed())
                .toList();
    }

    /** From how far an operation may still reach an end, by its own check. */
    List<Double> reaches(Move move, double from, double end) {
        return move.check().all().stream()
                .flatMap(comparison -> root(
                                begin -> comparison.difference(
                                        aim.sight(node, move, Value.of(begin), Value.of(end), move.most())),
                                end + 0.7 * (from - end),
                                end + 0.3 * (from - end))
                        .stream()
                        .boxed())
                .toList();
    }

    /** The root of a straight line, which every check we know is; anything else has no bound. */
    private static OptionalDouble root(DoubleUnaryOperator line, double at, double other) {
        double one = line.applyAsDouble(at);
        double two = line.applyAsDouble(other);
        if (Double.isNaN(one) || Double.isNaN(two) || Math.abs(one - two) < Formula.NOTHING) {
            return OptionalDouble.empty();
        }
        double root = at - one * (at - other) / (one - two);
        return root > 0 && Math.abs(line.applyAsDouble(root)) <= Formula.NOTHING
                ? OptionalDouble.of(root)
                : OptionalDouble.empty();
    }
}
