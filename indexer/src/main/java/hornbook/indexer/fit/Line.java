package hornbook.indexer.fit;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/** Where a straight line is nought: every check we know is one in the size that is worked. */
final class Line {
    private Line() {}

    /**
     * The root over nought, by two places on the line; none where it has none, is not known, or is not straight.
     */
    static OptionalDouble root(DoubleUnaryOperator line, double at, double other) {
        double one = line.applyAsDouble(at);
        double two = line.applyAsDouble(other);
        if (Double.isNaN(one) || Double.isNaN(two) || Math.abs(one - two) < Formula.NOTHING) {
            return OptionalDouble.empty();
        }
        double root = at - one * (at - other) / (one - two);
        return root > 0 && Math.abs(line.applyAsDouble(root)) <= Formula.NOTHING
                ? OptionalDouble.of(root)
                : OptionalDouble.empty();
    }
}
