package hornbook.indexer.fit;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The least that is still to be spent, whatever is chosen: what is not there yet takes one more operation each. */
final class Ahead {
    private final Aim aim;
    private final Minutes minutes;
    private final List<Move> moves;
    private final WordChance chance;

    Ahead(Aim aim, Minutes minutes, List<Move> moves) {
        this.aim = aim;
        this.minutes = minutes;
        this.moves = moves;
        this.chance = new WordChance(aim, moves);
    }

    /** Minutes, with the moves from that place on; infinite where they cannot bring about what is wanted. */
    double least(int at, Node node) {
        Set<String> all = new LinkedHashSet<>(aim.wants().keySet());
        all.addAll(node.owed.keySet());
        double least = 0;
        for (String dimension : all) {
            if (aim.unmet(node, dimension)) {
                least += least(at, node, dimension);
            }
        }
        return least;
    }

    private double least(int at, Node node, String dimension) {
        double least = Double.POSITIVE_INFINITY;
        double reach = 0;
        double gap = gap(node, dimension);
        Want want = aim.want(node, dimension).orElseThrow();
        for (int place = at; place < moves.size(); place++) {
            Move move = moves.get(place);
            if (alters(move, dimension)) {
                return 0;
            }
            if (move.dimension().equals(dimension)) {
                if (ends(want, place, at, node)) {
                    double units = move.unitsStarted() ? 1 : 0;
                    least = Math.min(least, minutes.of(move, !node.setUp.contains(move.id()), units, aim.count()));
                }
                reach += reach(move, gap);
            }
        }
        return reach + Formula.NOTHING < Math.abs(gap) ? Double.POSITIVE_INFINITY : least;
    }

    /** Whether the move may be the last on the dimension: the one that leaves it as wanted. */
    private boolean ends(Want want, int place, int at, Node node) {
        Move move = moves.get(place);
        return switch (want) {
            case Want.Among _ -> chance.of(place, at, node);
            case Want.Between between -> move.sets() || move.working().reaches() != null || ends(between, move, node);
        };
    }

    /** Sure enough, and not past a bound that is a plain figure. */
    private boolean ends(Want.Between want, Move move, Node node) {
        double low = want.low() + move.accuracy();
        double high = want.high() - move.accuracy();
        if (low > high + Formula.NOTHING) {
            return false;
        }
        return move.check().all().stream()
                .filter(comparison -> comparison.names().equals(Set.of("to")))
                .allMatch(comparison -> holds(comparison, move, node, low) || holds(comparison, move, node, high));
    }

    private boolean holds(Comparison comparison, Move move, Node node, double to) {
        return comparison.holds(aim.sight(node, move, null, Value.of(to), 1));
    }

    private static boolean alters(Move move, String dimension) {
        return !move.working().grows().isEmpty() || move.working().marks().containsKey(dimension);
    }

    /** How far a size is from what is wanted, mm: over nought where it is too large. */
    private double gap(Node node, String dimension) {
        if (aim.want(node, dimension).orElse(null) instanceof Want.Between(double low, double high)
                && node.value(dimension) instanceof Value.Amount(double mm, double _)) {
            return mm > high ? mm - high : Math.min(0, mm - low);
        }
        return 0;
    }

    /** How far an operation may go that way, mm. */
    private static double reach(Move move, double gap) {
        if (move.sets() || move.working().reaches() != null) {
            return Double.POSITIVE_INFINITY;
        }
        if (gap > 0 && !move.makesSmaller() || gap < 0 && !move.makesLarger()) {
            return 0;
        }
        Double most = move.operation().maxAmount();
        return most == null ? Double.POSITIVE_INFINITY : most * move.most();
    }
}
