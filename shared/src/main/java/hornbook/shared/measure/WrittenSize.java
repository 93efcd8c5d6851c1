package hornbook.shared.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * A size as written: a fraction of a unit, the unit only if one was written.
 *
 * @param numerator over {@code denominator}, of the unit
 * @param denominator at least 1
 * @param unit empty where none was written
 * @param inches whether the bare form can only mean inches: a fraction by 2, 4, 8 … 128
 */
record WrittenSize(BigDecimal numerator, BigInteger denominator, Optional<LengthUnit> unit, boolean inches) {

    static WrittenSize exactly(Length length) {
        return new WrittenSize(length.millimetres(), BigInteger.ONE, Optional.of(LengthUnit.MILLIMETRE), false);
    }

    /** The length, in {@code bare} where no unit was written; a fraction of an inch needs none. */
    Length length(LengthUnit bare) {
        long each = unit.orElse(inches ? LengthUnit.INCH : bare).nanometres();
        return new Length(numerator
                .multiply(BigDecimal.valueOf(each))
                .divide(new BigDecimal(denominator), 0, RoundingMode.HALF_UP)
                .longValueExact());
    }
}
