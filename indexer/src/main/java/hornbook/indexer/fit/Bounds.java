package hornbook.indexer.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

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

    /** The root of left less right, which is a straight line in every check we know; anything else has no bound. */
    private void bound(Comparison comparison, Move next, String dimension, double from, List<Double> into) {
        double one = difference(comparison, next, dimension, from);
        double half = difference(comparison, next, dimension, from / 2);
        if (Double.isNaN(one) || Double.isNaN(half) || Math.abs(one - half) < Formula.NOTHING) {
            return;
        }
        double root = from - one * (from / 2) / (one - half);
        if (root > 0 && Math.abs(difference(comparison, next, dimension, root)) <= Formula.NOTHING) {
            into.add(root);
        }
    }

    private double difference(Comparison comparison, Move next, String dimension, double mm) {
        Map<String, Value> changed = new HashMap<>(node.changed);
        changed.put(dimension, Value.of(mm));
        return comparison.difference(
                aim.sight(node.with(changed), next, Value.of(Double.NaN), Value.of(Double.NaN), 1));
    }
}
