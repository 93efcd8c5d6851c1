package hornbook.indexer.fit;

import java.util.Map;

/**
 * Minutes of an operation: set up once a plan, then by units; the shop's own clock, where it has clocked the operation,
 * takes the place of both.
 *
 * @param own by operation, minutes for one piece as this shop clocked them
 */
record Minutes(Map<String, Double> own) {
    Minutes {
        own = Map.copyOf(own);
    }

    boolean clocked(Move move) {
        return own.containsKey(move.id());
    }

    /**
     * @param first whether it is the first of its kind in the plan
     * @param units for one piece; not a number where they cannot be reckoned, which counts as one
     */
    double of(Move move, boolean first, double units, int pieces) {
        Double clocked = own.get(move.id());
        if (clocked != null) {
            return clocked * pieces;
        }
        if (!first && move.operation().changes().equals("all")) {
            return 0;
        }
        double each = Double.isNaN(units) ? 1 : units;
        return (first ? move.operation().minutesSetUp() : 0) + move.operation().minutesPerUnit() * each * pieces;
    }
}
