package hornbook.indexer.fit;

import java.util.Set;
import java.util.TreeSet;

/** Two sides compared; sides nearer than a rounding error are equal. */
record Comparison(Formula left, Relation relation, Formula right, String text) {
    /** How the sides have to stand to each other. */
    enum Relation {
        AT_MOST,
        AT_LEAST,
        UNDER,
        OVER,
        EQUAL,
        UNEQUAL
    }

    /** Left less right; not a number where a name is not known. */
    double difference(Names names) {
        return left.value(names) - right.value(names);
    }

    /** Only where {@link #difference} is a number. */
    boolean holds(Names names) {
        double difference = difference(names);
        boolean same = Math.abs(difference) <= Formula.NOTHING;
        return switch (relation) {
            case AT_MOST -> same || difference < 0;
            case AT_LEAST -> same || difference > 0;
            case UNDER -> !same && difference < 0;
            case OVER -> !same && difference > 0;
            case EQUAL -> same;
            case UNEQUAL -> !same;
        };
    }

    /** The names that stand in it. */
    Set<String> names() {
        Set<String> names = new TreeSet<>();
        left.names(names);
        right.names(names);
        return names;
    }

    boolean known(Names names) {
        return !Double.isNaN(difference(names));
    }
}
