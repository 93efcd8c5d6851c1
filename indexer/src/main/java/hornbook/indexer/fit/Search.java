package hornbook.indexer.fit;

import hornbook.catalogue.entry.PieceEnd;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The cheapest way to make one piece fit: every choice of operations, each at most once a dimension, in the order of
 * work; the fewest first. For each choice, sizes end where all of it takes least ({@link SizeEnds}). What costs more than
 * the best so far is not followed.
 */
final class Search {
    private final Aim aim;
    private final Piece piece;
    private final Charges charges;
    private final Minutes minutes;
    private final List<Move> moves;
    private final Ends ends;
    private final Permit permit;
    private final Node start;
    private final Useful useful;
    private final Ahead ahead;
    private @Nullable Plan best;
    private @Nullable Move joining;

    Search(Aim aim, Rack rack, Charges charges, Minutes minutes, Piece piece) {
        this.aim = aim;
        this.charges = charges;
        this.minutes = minutes;
        this.piece = piece;
        this.moves = new Doable(aim, piece).of(piece.craft().moves());
        Looks looks = new Looks(aim, piece);
        Reaching reaching = new Reaching(aim, minutes, looks);
        this.ends = new Ends(aim, moves, new SizeEnds(moves, rack, looks, reaching));
        this.permit = new Permit(aim, rack);
        this.start = begun();
        this.useful = new Useful(aim, moves, looks, permit, start);
        this.ahead = new Ahead(aim, minutes, moves, reaching, start);
    }

    /** The best plan; none where the piece cannot be made to fit. */
    Optional<Plan> best() {
        best = null;
        joining = null;
        choose(0, List.of());
        for (Move move : moves) {
            if (move.pieces() > 1) {
                joining = move;
                choose(0, List.of());
            }
        }
        return Optional.ofNullable(best);
    }

    /** Whether something was refused for want of a tool alone. */
    boolean lackedTools() {
        return permit.lacked();
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

    /** Tries the work as it is; then with every operation from that place on as the next, the last first. */
    private void choose(int from, List<Integer> work) {
        int last = last(from, work);
        if (hopeless(work, from)) {
            return;
        }
        if (last == moves.size() && !hopeless(work, last)) {
            done(work, 0, start);
        }
        // Fewer operations first: what they cost keeps dearer ways from being followed.
        for (int at = Math.min(last, moves.size() - 1); at >= from; at--) {
            boolean apart = moves.get(at).pieces() > 1 && !moves.get(at).equals(joining);
            if (!apart && useful.next(at, work)) {
                List<Integer> more = new ArrayList<>(work);
                more.add(at);
                choose(at + 1, more);
            }
        }
    }

    /** The place of the operation that cannot be left out; past the last where there is none. */
    private int last(int from, List<Integer> work) {
        for (int at = from; at < moves.size(); at++) {
            Move move = moves.get(at);
            if (move.equals(joining) || ahead.unmet(move.dimension()) && !altered(move.dimension(), at + 1, work)) {
                return at;
            }
        }
        return moves.size();
    }

    /** Whether it is worked already, or a move from that place on can still change it. */
    private boolean altered(String dimension, int from, List<Integer> work) {
        return work.stream().anyMatch(at -> alters(moves.get(at), dimension))
                || moves.subList(from, moves.size()).stream().anyMatch(move -> alters(move, dimension));
    }

    private static boolean alters(Move move, String dimension) {
        return move.dimension().equals(dimension)
                || !move.working().grows().isEmpty()
                || move.working().marks().containsKey(dimension);
    }

    /** Leads nowhere, or is dearer than the best at the least that can be said of it. */
    private boolean hopeless(List<Integer> work, int from) {
        double least = ahead.least(work, from);
        if (best == null || least == Double.POSITIVE_INFINITY) {
            return least == Double.POSITIVE_INFINITY;
        }
        boolean reversible = start.reversible()
                && work.stream().allMatch(at -> moves.get(at).operation().reversible());
        double charge = charges.least(piece, reversible, aim.count(), aim);
        return least + charge > best.total() + Formula.NOTHING;
    }

    private boolean fits(Node node) {
        Set<String> all = new LinkedHashSet<>(aim.wants().keySet());
        all.addAll(node.owed.keySet());
        return all.stream().noneMatch(dimension -> aim.unmet(node, dimension));
    }

    /** Whether the rest of the work changes all that is not as wanted. */
    private boolean mended(List<Integer> work, int at, Node node) {
        List<Integer> rest = work.subList(at, work.size());
        return Stream.concat(aim.wants().keySet().stream(), node.owed.keySet().stream())
                .filter(dimension -> aim.unmet(node, dimension))
                .allMatch(dimension -> rest.stream().anyMatch(place -> alters(moves.get(place), dimension)));
    }

    /** Does the rest of the work; true where it makes the piece fit. */
    private boolean done(List<Integer> work, int at, Node node) {
        if (at == work.size()) {
            Plan plan = new Plan(node, node.minutes, charges.of(node, aim.count(), aim));
            boolean fits = fits(node);
            if (fits && (best == null || plan.betterThan(best))) {
                best = plan;
            }
            return fits;
        }
        Move move = moves.get(work.get(at));
        Value from = node.value(move.dimension());
        if (!permit.starts(move, from) || !mended(work, at, node)) {
            return false;
        }
        boolean fits = false;
        for (Iterator<Value> all = ends.of(work, at, node, from).iterator(); all.hasNext(); ) {
            Value to = all.next();
            for (Node next : done(move, node, to)) {
                fits |= done(work, at + 1, next);
            }
            // Another end of a size is only looked for where the first leads nowhere.
            if (fits && to instanceof Value.Amount) {
                return true;
            }
        }
        return fits;
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
