package hornbook.indexer.fit;

import hornbook.catalogue.entry.PieceEnd;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The cheapest way to make one piece fit: every choice of operations, each at most once a dimension, in the order of
 * work, each with every end it can sensibly have. What costs more than the best so far is not followed.
 */
final class Search {
    private final Aim aim;
    private final Rack rack;
    private final Charges charges;
    private final Minutes minutes;
    private final List<Move> moves;
    private final Ends ends;
    private @Nullable Plan best;
    private @Nullable Move joining;

    Search(Aim aim, Rack rack, Charges charges, Minutes minutes, Craft craft) {
        this.aim = aim;
        this.rack = rack;
        this.charges = charges;
        this.minutes = minutes;
        this.moves = craft.moves();
        this.ends = new Ends(aim, moves, rack);
    }

    /** The best plan; none where the piece cannot be made to fit. */
    Optional<Plan> best(Piece piece) {
        best = null;
        Node start = begun(piece);
        joining = null;
        go(0, start);
        for (Move move : moves) {
            if (move.pieces() > 1) {
                joining = move;
                go(0, start);
            }
        }
        return Optional.ofNullable(best);
    }

    /** What belongs to every such making is done whatever else is. */
    private Node begun(Piece piece) {
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

    private void go(int at, Node node) {
        if (best != null && node.minutes > best.total() + Formula.NOTHING) {
            return;
        }
        if (at == moves.size()) {
            finish(node);
            return;
        }
        Move move = moves.get(at);
        if (move.pieces() == 1 || move.equals(joining)) {
            for (Value to : ends.of(at, node, node.value(move.dimension()))) {
                for (Node next : done(move, node, to)) {
                    go(at + 1, next);
                }
            }
        }
        boolean last = !altered(move.dimension(), at + 1) && aim.unmet(node, move.dimension());
        if (!last && !move.equals(joining)) {
            go(at + 1, node);
        }
    }

    /** Whether a move from that place on can still change a dimension. */
    private boolean altered(String dimension, int from) {
        return moves.subList(from, moves.size()).stream()
                .anyMatch(m -> m.dimension().equals(dimension)
                        || !m.working().grows().isEmpty()
                        || m.working().marks().containsKey(dimension));
    }

    private void finish(Node node) {
        Set<String> all = new LinkedHashSet<>(aim.wants().keySet());
        all.addAll(node.owed.keySet());
        if (all.stream().noneMatch(dimension -> aim.unmet(node, dimension))) {
            Plan plan = new Plan(node, node.minutes, charges.of(node, aim.count(), aim));
            if (best == null || plan.betterThan(best)) {
                best = plan;
            }
        }
    }

    /** The piece after the operation, once for each end it may be done at; none where it may not be done. */
    private List<Node> done(Move move, Node node, Value to) {
        Value from = node.value(move.dimension());
        if (!new Permit(aim, rack).starts(move, from)) {
            return List.of();
        }
        Optional<Permit.Given> given = new Permit(aim, rack).given(move, node, from, to);
        if (given.isEmpty()) {
            return List.of();
        }
        List<Node> all = new ArrayList<>();
        for (Map.Entry<String, Map<String, String>> end : endsTaken(move, node).entrySet()) {
            Node next = node.copy();
            if (lose(next, end.getValue(), given.get().sight())) {
                next.end = end.getKey().isEmpty() ? next.end : end.getKey();
                set(next, move, from, to, given.get());
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

    private void set(Node next, Move move, @Nullable Value from, Value to, Permit.Given given) {
        int pieces = aim.count() * (joining != null && move.order() < joining.order() ? joining.pieces() : 1);
        double units = move.units().value(given.sight());
        double spent = minutes.of(move, next.setUp.add(move.id()), units, pieces);
        Set<String> asks = new TreeSet<>(given.asks());
        next.changed.put(move.dimension(), to);
        next.minutes += spent;
        next.steps.add(new Node.Done(
                move,
                from,
                to,
                given.n(),
                spent,
                asks,
                next.end != null && move.takesEnd() ? next.end : null,
                given.sight()));
        if (move.takesEnd() && move.working().leaves() != null) {
            next.sawn += given.sight().value("amt");
        }
        if (aim.want(next, move.dimension()).orElse(null) instanceof Want.Between between
                && to instanceof Value.Amount(double mm, double _)) {
            next.off += Math.abs(mm - between.middle());
        }
        move.working().marks().forEach((dimension, word) -> mark(next, dimension, word));
        move.working()
                .grows()
                .forEach((word, formula) -> grow(next, word, FormulaReader.formula(formula), given.sight()));
    }

    private void mark(Node next, String dimension, String word) {
        Value was = next.value(dimension);
        next.changed.put(dimension, new Value.Word(word));
        if (was != null && !aim.wants().containsKey(dimension)) {
            next.owed.put(dimension, new Want.Among(List.of(was.shown())));
        }
    }

    /** Half to all of the most it can grow by. */
    private static void grow(Node next, String word, Formula formula, Sight sight) {
        String works = next.piece.craft().fitting().works().get(word);
        double most = formula.value(sight);
        if (works != null
                && next.value(works) instanceof Value.Amount(double mm, double doubt)
                && !Double.isNaN(most)) {
            next.changed.put(works, new Value.Amount(mm + 0.75 * most, doubt + 0.25 * most));
        }
    }
}
