package hornbook.indexer.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Where a dimension has to end so that an operation's check just holds. */
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
        for (Move next : wording(at)) {
            for (Comparison comparison : next.check().all()) {
                Line.root(mm -> difference(comparison, next, dimension, mm), from, from / 2)
                        .ifPresent(bounds::add);
            }
        }
        return bounds;
    }

    /** Whether such a bound is not kept as the piece stands. */
    boolean broken(int at) {
        return wording(at).stream()
                .anyMatch(next -> next.check()
                        .broken(aim.sight(node, next, null, null, 1))
                        .isPresent());
    }

    private List<Move> wording(int at) {
        String dimension = moves.get(at).dimension();
        return moves.subList(at + 1, moves.size()).stream()
                .filter(next -> !next.dimension().equals(dimension)
                        && aim.unmet(node, next.dimension())
                        && aim.want(node, next.dimension()).orElseThrow() instanceof Want.Among)
                .toList();
    }

    private double difference(Comparison comparison, Move next, String dimension, double mm) {
        Map<String, Value> changed = new HashMap<>(node.changed);
        changed.put(dimension, Value.of(mm));
        return comparison.difference(aim.sight(node.with(changed), next, null, null, 1));
    }

    /** Bounds that an operation's own check sets on where it ends, wherever it began. */
    List<Double> own(Move move, double from) {
        List<Double> bounds = new ArrayList<>();
        for (Comparison comparison : move.check().all()) {
            if (!comparison.looksAt("amt")) {
                Line.root(
                                to -> comparison.difference(
                                        aim.sight(node, move, Value.of(from), Value.of(to), move.most())),
                                from,
                                from / 2)
                        .ifPresent(bounds::add);
            }
        }
        return bounds;
    }
}
