package hornbook.indexer.fit;

import java.util.List;
import java.util.Map;

/** Whether it is worth while to search at all: every thing wanted is there, or some operation changes it. */
final class Reach {
    private Reach() {}

    static boolean possible(Aim aim, Piece piece) {
        Node node = new Node(piece);
        for (Map.Entry<String, Want> wanted : aim.wants().entrySet()) {
            if (aim.unmet(node, wanted.getKey()) && !changed(piece, wanted.getKey(), wanted.getValue())) {
                return false;
            }
        }
        return true;
    }

    private static boolean changed(Piece piece, String dimension, Want want) {
        List<Move> moves = piece.craft().moves();
        if (moves.stream()
                .anyMatch(m ->
                        !m.working().grows().isEmpty() || m.working().marks().containsKey(dimension))) {
            return true;
        }
        Value value = piece.value(dimension);
        if (want instanceof Want.Between(double low, double high)
                && value instanceof Value.Amount(double mm, double _)) {
            boolean smaller = mm > high;
            double most = moves.stream()
                    .filter(m -> m.dimension().equals(dimension))
                    .mapToDouble(m -> reach(m, smaller, mm))
                    .sum();
            return most + Formula.NOTHING >= (smaller ? mm - high : low - mm);
        }
        return moves.stream().anyMatch(m -> m.dimension().equals(dimension));
    }

    /** How far an operation may go that way, mm. */
    private static double reach(Move move, boolean smaller, double mm) {
        if (move.sets() || move.working().reaches() != null) {
            return Double.POSITIVE_INFINITY;
        }
        if (smaller ? !move.makesSmaller() : !move.makesLarger()) {
            return 0;
        }
        Double most = move.operation().maxAmount();
        return most == null ? (smaller ? mm : Double.POSITIVE_INFINITY) : most * move.most();
    }
}
