package hornbook.indexer.fit;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which operations could be done on a piece at all, whatever else is done to it. Sizes stay between what they are and
 * what they are to be, give or take; checks are straight lines in each of them, and what breaks the same way at every
 * corner breaks within.
 */
final class Doable {
    /** What operations leave for one another takes a size no further past what is wanted than this part of it. */
    private static final double PAST = 0.1;

    private static final Set<String> OWN = Set.of("amt", "to", "from", "n");

    private final Aim aim;
    private final Piece piece;

    Doable(Aim aim, Piece piece) {
        this.aim = aim;
        this.piece = piece;
    }

    List<Move> of(List<Move> moves) {
        return moves.stream().filter(this::doable).toList();
    }

    private boolean doable(Move move) {
        return move.sets()
                || move.operation().maxAmount() == null
                || !(piece.value(move.dimension()) instanceof Value.Amount)
                || move.check().all().stream()
                        .allMatch(comparison -> OWN.containsAll(comparison.names()) || somewhere(comparison, move));
    }

    private boolean somewhere(Comparison comparison, Move move) {
        double reach = java.util.Objects.requireNonNull(move.operation().maxAmount()) * move.most();
        Boolean over = null;
        for (Map<String, Value> corner : corners()) {
            Node node = new Node(piece).with(corner);
            if (!(node.value(move.dimension()) instanceof Value.Amount(double from, double _))) {
                return true;
            }
            double down = move.makesSmaller() ? Math.max(0, from - reach) : from;
            for (double to : List.of(down, move.makesLarger() ? from + reach : from)) {
                Sight sight = aim.sight(node, move, Value.of(from), Value.of(to), move.most());
                double difference = comparison.difference(sight);
                boolean now = difference > 0;
                if (Double.isNaN(difference) || comparison.holds(sight) || (over != null && over != now)) {
                    return true;
                }
                over = now;
            }
        }
        return false;
    }

    private List<Map<String, Value>> corners() {
        Corners corners = new Corners(Map.of());
        aim.wants().forEach((dimension, want) -> {
            if (want instanceof Want.Between(double low, double high)
                    && piece.value(dimension) instanceof Value.Amount(double mm, double _)) {
                corners.between(dimension, Math.min(mm, low) * (1 - PAST), Math.max(mm, high) * (1 + PAST));
            }
        });
        return corners.all();
    }
}
