package hornbook.indexer.fit;

import hornbook.indexer.fit.Want.Between;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Where an operation on a size ends, so that all operations on it that were chosen together take the least. Where another
 * operation looks at it together with a size that is still to be worked, other ends are offered after that.
 */
final class SizeEnds {
    private final List<Move> moves;
    private final Rack rack;
    private final Looks looks;
    private final Reaching reaching;
    private final Map<String, Set<String>> seen = new HashMap<>();
    private final Map<Others, Chain> known = new HashMap<>();

    /** A size, what is wanted of it, and what else has been changed that matters to it. */
    private record Others(String dimension, @Nullable Want want, Map<String, Value> others, boolean members) {}

    SizeEnds(List<Move> moves, Rack rack, Looks looks, Reaching reaching) {
        this.moves = moves;
        this.rack = rack;
        this.looks = looks;
        this.reaching = reaching;
    }

    /**
     * Ends of the operation at {@code work.get(at)}, each worked out when it is asked for; none where the work leads
     * nowhere.
     */
    Stream<Value> of(List<Integer> work, int at, Node node, @Nullable Want want, @Nullable Value from) {
        Move move = moves.get(work.get(at));
        double begun = from instanceof Value.Amount(double mm, double _) ? mm : Double.NaN;
        if (Double.isNaN(begun) && !move.sets()) {
            return Stream.of();
        }
        return Stream.<Supplier<Stream<Double>>>of(
                        () -> ends(work, at, node, Collections.singletonList(want), begun),
                        () -> ends(work, at, node, narrower(work, at, want), begun))
                .flatMap(Supplier::get)
                .distinct()
                .map(end -> new Value.Amount(end, move.accuracy()));
    }

    private Stream<Double> ends(
            List<Integer> work, int at, Node node, List<? extends @Nullable Want> wants, double begun) {
        List<Double> ends = ends(work, at, node, wants, begun, true);
        boolean members = !rack.sizes(moves.get(work.get(at))).isEmpty();
        // Where no member there is of the right size, the one that lacks is to be named.
        return ends.isEmpty() && members ? ends(work, at, node, wants, begun, false).stream() : ends.stream();
    }

    private List<Double> ends(
            List<Integer> work,
            int at,
            Node node,
            List<? extends @Nullable Want> wants,
            double begun,
            boolean members) {
        String dimension = moves.get(work.get(at)).dimension();
        Map<String, Value> others = looks.changed(seen(dimension), dimension, node);
        double stock = node.leaves.getOrDefault(dimension, 0.0);
        List<Double> ends = new ArrayList<>();
        for (Want want : wants) {
            known.computeIfAbsent(
                            new Others(dimension, want, others, members),
                            _ -> new Chain(dimension, want, node, moves, members ? rack : Rack.FULL, looks, reaching))
                    .first(work.subList(at, work.size()), begun, stock)
                    .ifPresent(ends::add);
        }
        return ends;
    }

    /** All that operations on a size, and those that look at it, look at. */
    private Set<String> seen(String dimension) {
        return seen.computeIfAbsent(dimension, _ -> {
            Set<String> all = new HashSet<>();
            for (Move move : moves) {
                if (move.dimension().equals(dimension) || looks.of(move).contains(dimension)) {
                    all.addAll(looks.of(move));
                }
            }
            return all;
        });
    }

    /** The middle and both ends of what is wanted, where a later operation looks at more than this size. */
    private List<Want> narrower(List<Integer> work, int at, @Nullable Want want) {
        if (!(want instanceof Between(double low, double high)) || !otherwiseSeen(work, at)) {
            return List.of();
        }
        String dimension = moves.get(work.get(at)).dimension();
        double accuracy = work.stream()
                .map(moves::get)
                .filter(move -> move.dimension().equals(dimension))
                .reduce((_, last) -> last)
                .map(Move::accuracy)
                .orElse(0.0);
        return DoubleStream.of((low + high) / 2, high - accuracy, low + accuracy)
                .mapToObj(mm -> (Want) new Between(mm - accuracy, mm + accuracy))
                .toList();
    }

    private boolean otherwiseSeen(List<Integer> work, int at) {
        String dimension = moves.get(work.get(at)).dimension();
        Set<String> worked = new HashSet<>();
        for (int place : work.subList(at + 1, work.size())) {
            Move move = moves.get(place);
            if (!move.dimension().equals(dimension)) {
                if (looks.of(move).contains(dimension) && (!move.sets() || together(move, dimension, worked))) {
                    return true;
                }
                worked.add(move.dimension());
            }
        }
        return false;
    }

    private boolean together(Move move, String dimension, Set<String> worked) {
        return Stream.of(move)
                .flatMap(m -> m.check().all().stream())
                .anyMatch(comparison -> looks.of(comparison, move).contains(dimension)
                        && !looks.at(comparison, move, dimension, worked));
    }
}
