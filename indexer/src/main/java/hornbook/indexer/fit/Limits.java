package hornbook.indexer.fit;

import hornbook.indexer.fit.Want.Between;

/**
 * How much an operation may change a size, and where it may end.
 *
 * @param amount least and most, mm; the least over the most where it may not be done
 * @param end smallest and largest size it may leave, mm
 */
record Limits(Between amount, Between end) {
    static final Limits NONE =
            new Limits(new Between(0, Double.POSITIVE_INFINITY), new Between(0, Double.POSITIVE_INFINITY));
    private static final Limits NEVER =
            new Limits(new Between(Double.POSITIVE_INFINITY, 0), new Between(Double.POSITIVE_INFINITY, 0));

    boolean never() {
        return amount.low() > amount.high() + Formula.NOTHING || end.low() > end.high() + Formula.NOTHING;
    }

    /** Drawn in so far that the comparison holds. */
    Limits holding(Comparison.Relation relation, Straight line) {
        return switch (relation) {
            case AT_MOST, UNDER -> under(line);
            case AT_LEAST, OVER -> under(line.turned());
            case EQUAL -> under(line).under(line.turned());
            case UNEQUAL -> this;
        };
    }

    /** Drawn in so far that the line is nought or less. A line in both is left to {@link Permit}. */
    private Limits under(Straight line) {
        if (line.byEnd() == 0 && line.byAmount() == 0) {
            return line.constant() > Formula.NOTHING ? NEVER : this;
        }
        if (line.byEnd() == 0) {
            return new Limits(cut(amount, line.byAmount(), line.constant()), end);
        }
        return line.byAmount() == 0 ? new Limits(amount, cut(end, line.byEnd(), line.constant())) : this;
    }

    private static Between cut(Between range, double slope, double constant) {
        double root = -constant / slope;
        return slope > 0
                ? new Between(range.low(), Math.min(range.high(), root))
                : new Between(Math.max(range.low(), root), range.high());
    }

    Limits upTo(double most) {
        return new Limits(new Between(amount.low(), Math.min(amount.high(), most)), end);
    }
}
