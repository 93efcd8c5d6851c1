package hornbook.indexer.fit;

import java.util.Optional;
import java.util.function.DoubleBinaryOperator;

/** A straight line in where an operation ends and in how much it takes: {@code constant + byEnd·to + byAmount·amt}. */
record Straight(double constant, double byEnd, double byAmount) {
    private static final double ANY = 2;
    private static final double FLAT = 1e-9;

    /** None where it is not known, or not straight. */
    static Optional<Straight> of(DoubleBinaryOperator line) {
        double here = line.applyAsDouble(ANY, ANY);
        double end = line.applyAsDouble(ANY + 1, ANY);
        double amount = line.applyAsDouble(ANY, ANY + 1);
        double both = line.applyAsDouble(ANY + 1, ANY + 1);
        if (Double.isNaN(here + end + amount + both) || Math.abs(end + amount - here - both) > Formula.NOTHING) {
            return Optional.empty();
        }
        double byEnd = flat(end - here);
        double byAmount = flat(amount - here);
        double farther = line.applyAsDouble(2 * ANY, 2 * ANY);
        Straight straight = new Straight(here - ANY * (byEnd + byAmount), byEnd, byAmount);
        return Math.abs(straight.at(2 * ANY, 2 * ANY) - farther) <= Formula.NOTHING
                ? Optional.of(straight)
                : Optional.empty();
    }

    private double at(double end, double amount) {
        return constant + byEnd * end + byAmount * amount;
    }

    private static double flat(double slope) {
        return Math.abs(slope) < FLAT ? 0 : slope;
    }

    Straight turned() {
        return new Straight(-constant, -byEnd, -byAmount);
    }
}
