package hornbook.indexer.fit;

import hornbook.catalogue.entry.PieceEnd;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The cheapest way to make one piece fit: every choice of operations, each at most once a dimension, in the order of
 * work, each with every end it can sensibly have. What costs more than the best so far, or comes again to where the
 * piece has been for less, is not followed.
 */
final class Search {
    private final Aim aim;
    private final Piece piece;
    private final Charges charges;
    private final Minutes minutes;
    private final List<Move> moves;
    private final Ends ends;
    private final Permit permit;
    private final Ahead ahead;
    private @Nullable Plan best;
    private @Nullable Move joining;
    private Seen seen = new Seen();

    Search(Aim aim, Rack rack, Charges charges, Minutes minutes, Piece piece) {
        this.aim = aim;
        this.charges = charges;
        this.minutes = minutes;
        this.piece = piece;
        this.moves = new Doable(aim, piece).of(piece.craft().moves());
        this.ends = new Ends(aim, moves, rack);
        this.permit = new Permit(aim, rack);
        this.ahead = new Ahead(aim, minutes, moves);
    }

    /** The best plan; none where the piece cannot be made to fit. */
    Optional<Plan> best() {
        best = null;
        Node start = begun();
        searched(start, null);
        for (Move move : moves) {
            if (move.pieces() > 1) {
                searched(start, move);
            }
        }
        return Optional.ofNullable(best);
    }

    /** Whether something was refused for want of a tool alone. */
    boolean lackedTools() {
        return permit.lacked();
    }

    private void searched(Node start, @Nullable Move join) {
        joining = join;
        seen = new Seen();
        go(0, start);
    }

    /** What belongs to every such making is done whatever else is. */
    private Node begun() {
        Node node = new Node(piece).copy();
        for (Move move : piece.craft().through()) {
            Sight sight = aim.sight(node, move, null, null, 1);
            double units = move.units().value(sight);
            double spent = minutes.of(move, true, units, aim.count());
            node.minutes += spent;
            node.setUp.add(move.id());
            node.steps.add(new Node.Done(move, null, Value.of(1), 1, spent, Set.of(), null, sight));
        }
        return node;
    }

    /** Takes the piece as it is; then tries every operation from that place on as the next, the last first. */
    private void go(int from, Node node) {
        Plan soFar = new Plan(node, node.minutes, charges.of(node, aim.count(), aim));
        if (hopeless(from, node, soFar)) {
            return;
        }
        int last = last(from, node);
        if (last == moves.size() && fits(node) && (best == null || soFar.betterThan(best))) {
            best = soFar;
        }
        // Fewer operations first: what they cost keeps dearer ways from being followed.
        for (int at = Math.min(last, moves.size() - 1); at >= from; at--) {
            List<Value> to = ends(at, node);
            if (!to.isEmpty() && !hopeless(at, node, soFar) && !seen.forLess(at, node)) {
                for (Value end : to) {
                    for (Node next : done(moves.get(at), node, end)) {
                        go(at + 1, next);
                    }
                }
            }
        }
    }

    /** The place of the operation that cannot be left out; past the last where there is none. */
    private int last(int from, Node node) {
        for (int at = from; at < moves.size(); at++) {
            Move move = moves.get(at);
            if (move.equals(joining) || aim.unmet(node, move.dimension()) && !altered(move.dimension(), at + 1)) {
                return at;
            }
        }
        return moves.size();
    }

    private List<Value> ends(int at, Node node) {
        Move move = moves.get(at);
        Value from = node.value(move.dimension());
        boolean apart = move.pieces() > 1 && !move.equals(joining);
        return apart || !permit.starts(move, from) || !permit.anywhere(move, node, from)
                ? List.of()
                : ends.of(at, node, from);
    }

    private boolean hopeless(int at, Node node, Plan soFar) {
        double least = ahead.least(at, node);
        return least == Double.POSITIVE_INFINITY
                || best != null && (!soFar.betterThan(best) || soFar.total() + least > best.total() + Formula.NOTHING);
    }

    /** Whether a move from that place on can still change a dimension. */
    private boolean altered(String dimension, int from) {
        for (Move move : moves.subList(from, moves.size())) {
            if (move.dimension().equals(dimension)
                    || !move.working().grows().isEmpty()
                    || move.working().marks().containsKey(dimension)) {
                return true;
            }
        }
        return false;
    }

    private boolean fits(Node node) {
        Set<String> all = new LinkedHashSet<>(aim.wants().keySet());
        all.addAll(node.owed.keySet());
        return all.stream().noneMatch(dimension -> aim.unmet(node, dimension));
    }

    /** The piece after the operation, once for each end it may be done at; none where it may not be done. */
    private List<Node> done(Move move, Node node, Value to) {
        Value from = node.value(move.dimension());
        Optional<Permit.Given> given = permit.given(move, node, from, to);
        if (given.isEmpty()) {
            return List.of();
        }
        List<Node> all = new ArrayList<>();
        for (Map.Entry<String, Map<String, String>> end : endsTaken(move, node).entrySet()) {
            Node next = node.copy();
            if (lose(next, end.getValue(), given.get().sight())) {
                next.end = end.getKey().isEmpty() ? next.end : end.getKey();
                int joined = joining != null && move.order() < joining.order() ? joining.pieces() : 1;
                next.done(move, from, to, given.get(), minutes, aim, aim.count() * joined);
                all.add(next);
            }
        }
        return all;
    }

    private static Map<String, Map<String, String>> endsTaken(Move move, Node node) {
        Map<String, PieceEnd> ends = node.piece.craft().ends();
        Map<String, Map<String, String>> taken = new LinkedHashMap<>();
        if (move.takesEnd() && node.end != null) {
            taken.put(node.end, Map.of());
        } else if (move.takesEnd() && !ends.isEmpty()) {
            ends.forEach((name, end) -> taken.put(name, end.loses()));
        } else {
            taken.put("", Map.of());
        }
        return taken;
    }

    /** Takes away what goes with an end; false where only a piece of it would go. */
    private boolean lose(Node next, Map<String, String> loses, Sight sight) {
        for (Map.Entry<String, String> loss : loses.entrySet()) {
            Value was = next.value(loss.getKey());
            Value then = Pieces.value(loss.getValue(), next::value);
            double zone = next.piece
                    .craft()
                    .zone(loss.getKey())
                    .map(z -> z.value(sight))
                    .orElse(0.0);
            if (was == null || was.shown().equals(then.shown())) {
                continue;
            }
            if (sight.value("amt") < zone - Formula.NOTHING) {
                return false;
            }
            next.changed.put(loss.getKey(), then);
            if (!aim.wants().containsKey(loss.getKey())) {
                next.owed.put(loss.getKey(), new Want.Among(List.of(was.shown())));
            }
        }
        return true;
    }
}
