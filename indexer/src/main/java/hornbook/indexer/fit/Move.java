package hornbook.indexer.fit;

import hornbook.catalogue.entry.Direction;
import hornbook.catalogue.entry.Operation;
import hornbook.catalogue.entry.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An operation put to one dimension of a kind, its texts read.
 *
 * @param order place in the order of work
 * @param names what names mean in this operation alone
 * @param zone length of the zone worked, mm
 */
record Move(
        Operation operation,
        Working working,
        String dimension,
        int order,
        Check check,
        Optional<Check> whenKnown,
        Formula units,
        Map<String, Formula> names,
        Optional<Formula> zone) {

    String id() {
        return operation.id();
    }

    /** Leaves a size within plus and minus this, mm. */
    double accuracy() {
        return operation.accuracy() == null ? 0 : operation.accuracy();
    }

    /** Stock it leaves for the next operation on the same dimension, mm: at least its own error. */
    double leaves() {
        return working.leaves() == null ? accuracy() : working.leaves();
    }

    /** All that has to hold, with what only has to where it is known. */
    List<Comparison> comparisons() {
        List<Comparison> all = new ArrayList<>(check.all());
        whenKnown.ifPresent(more -> all.addAll(more.all()));
        return all;
    }

    boolean sets() {
        return operation.direction() == Direction.SETS;
    }

    boolean makesSmaller() {
        return operation.direction() == Direction.SMALLER || operation.direction() == Direction.EITHER;
    }

    boolean makesLarger() {
        return operation.direction() == Direction.LARGER || operation.direction() == Direction.EITHER;
    }

    boolean takesEnd() {
        return Boolean.TRUE.equals(working.takesEnd());
    }

    int most() {
        return working.most() == null ? 1 : working.most();
    }

    /** Whether any amount of it is at least one unit of work. */
    boolean unitsStarted() {
        List<Formula> jumps = new ArrayList<>();
        units.jumps(jumps);
        return !jumps.isEmpty() || units instanceof Formula.Named(String name) && name.equals("n");
    }

    int pieces() {
        return working.pieces() == null ? 1 : working.pieces();
    }
}
