package hornbook.shared.measure;

import java.math.BigDecimal;

/** What stands after a {@code =} in a stock record's dimensions. */
public sealed interface DimensionValue {
    /** A length with its unit, a drill or a gauge: {@code 10.4 mm}, {@code 1-1/64"}, {@code #40}, {@code 8-25 mm}. */
    record Size(Measured measured) implements DimensionValue {}

    /** A bare number: a count, a yes or no. */
    record Number(BigDecimal value) implements DimensionValue {}

    /** Anything that begins with a letter and is no size: {@code headed-tapered}. */
    record Word(String text) implements DimensionValue {}
}
