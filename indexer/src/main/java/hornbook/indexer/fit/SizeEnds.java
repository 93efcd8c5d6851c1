package hornbook.indexer.fit;

import hornbook.indexer.fit.Want.Between;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Where an operation on a size can sensibly end. A plan changes, in what may be done or in what it costs, only where it
 * ends at the middle or an end of what is wanted, drawn in by its accuracy; at the bound of a check; as far as its own
 * limit, or so many units of its work, reach; or where a later operation on the same size can just, or in so many units,
 * go on from. Finitely many, so a search over them is exact.
 */
final class SizeEnds {
    private final Aim aim;
    private final List<Move> moves;
    private final Rack rack;
    private final Targets targets;

    SizeEnds(Aim aim, List<Move> moves, Rack rack) {
        this.aim = aim;
        this.moves = moves;
        this.rack = rack;
        this.targets = new Targets(aim, moves);
    }

    List<Value> of(int at, Node node, @Nullable Want want, @Nullable Value from) {
        Move move = moves.get(at);
        List<Double> ends = new ArrayList<>();
        if (move.working().leaves() != null && want instanceof Between between) {
            ends.addAll(Targets.last(move, between));
            leaving(at, node, between, from, ends);
        } else if (from instanceof Value.Amount(double mm, double _)) {
            List<Double> aimed = targets.of(at, node, want, mm);
            ends.addAll(aimed);
            if (followed(at)) {
                reached(move, node, mm, aimed, ends);
            }
            if (!move.unitsByAmount() && want instanceof Between between) {
                List<Double> checked = new Bounds(aim, moves, node).later(at, mm);
                DoublePredicate first = aimedFirst(move, node, between, from);
                ends.removeIf(end -> !checked.contains(end) && !first.test(end));
            }
        } else if (want instanceof Between between) {
            ends.addAll(Targets.last(move, between));
        }
        DoublePredicate allowed = direction(move, from);
        return Targets.apart(members(at, want, ends)).stream()
                .filter(allowed::test)
                .map(end -> (Value) new Value.Amount(end, move.accuracy()))
                .toList();
    }

    /** A drill, reamer or punch leaves its own size: those that are there, as wanted or on the way to it. */
    private List<Double> members(int at, @Nullable Want want, List<Double> ends) {
        Move move = moves.get(at);
        List<Double> sizes = rack.sizes(move);
        if (sizes.isEmpty() || ends.isEmpty() || !(want instanceof Between between)) {
            return ends;
        }
        double least = Collections.min(ends);
        double most = Collections.max(ends);
        List<Double> all = new ArrayList<>(ends);
        sizes.stream()
                .filter(size -> between.met(new Value.Amount(size, move.accuracy()))
                        || (followed(at) && size >= least && size <= most))
                .forEach(all::add);
        return all;
    }

    /**
     * Where its minutes are the same wherever it ends, the first that can be reached is the one to aim at, though a later
     * operation were done sooner on a shorter piece.
     */
    private DoublePredicate aimedFirst(Move move, Node node, Between want, Value from) {
        Optional<Double> first = Targets.last(move, want).stream()
                .filter(may(move, node, from)::test)
                .findFirst();
        return end -> first.filter(one -> one == end).isPresent() || !want.met(new Value.Amount(end, move.accuracy()));
    }

    /** What it reaches from where it begins, and half way to where it could aim: a cut between two others. */
    private void reached(Move move, Node node, double from, List<Double> aimed, List<Double> into) {
        double far =
                aimed.stream().mapToDouble(end -> Math.abs(end - from)).max().orElse(0);
        Amounts amounts = Amounts.of(move, node, aim);
        List<Double> all = new ArrayList<>(amounts.upTo(far, 0));
        all.add(Math.max(amounts.least(), Targets.HAIR));
        for (double amount : all) {
            into.add(from + amount);
            into.add(from - amount);
        }
        if (move.leaves() == 0) {
            aimed.forEach(end -> into.add((from + end) / 2));
        }
    }

    /** What leaves a stated stock leaves just that, for the first end that the next operation can aim at. */
    private void leaving(int at, Node node, Between want, @Nullable Value from, List<Double> into) {
        Move move = moves.get(at);
        DoublePredicate may = may(move, node, from);
        moves.subList(at + 1, moves.size()).stream()
                .filter(next -> next.dimension().equals(move.dimension()))
                .flatMap(next -> Targets.last(next, want).stream())
                .flatMap(end -> Stream.of(end + move.leaves(), end - move.leaves()))
                .filter(may::test)
                .findFirst()
                .ifPresent(into::add);
    }

    private DoublePredicate may(Move move, Node node, @Nullable Value from) {
        return direction(move, from)
                .and(end -> new Permit(aim, Rack.FULL)
                        .given(move, node, from, new Value.Amount(end, move.accuracy()))
                        .isPresent());
    }

    private boolean followed(int at) {
        return moves.subList(at + 1, moves.size()).stream()
                .anyMatch(next -> next.dimension().equals(moves.get(at).dimension()));
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
