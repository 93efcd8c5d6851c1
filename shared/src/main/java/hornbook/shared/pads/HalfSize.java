package hornbook.shared.pads;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** Sizes in whole half millimetres: {@code 37} is 18.5 mm. */
final class HalfSize {
    /** Pads are made from 6.0 to 72.0 mm (common practice). */
    static final int LEAST = 12;

    static final int MOST = 144;

    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    private HalfSize() {}

    /** The ruled size of a cup: the nearest, floor(2d + 1/2), or ceil(2d - 1/2) where a tie goes down. */
    static int ruled(BigDecimal mm, Tie tie) {
        RoundingMode mode = tie == Tie.UP ? RoundingMode.HALF_UP : RoundingMode.HALF_DOWN;
        return mm.multiply(TWO).setScale(0, mode).intValueExact();
    }

    /** The size of a pad on hand, nothing where it is no half millimetre or out of the range made. */
    static Optional<Integer> exactly(BigDecimal mm) {
        BigDecimal halves = mm.multiply(TWO).stripTrailingZeros();
        boolean size = halves.scale() <= 0
                && halves.compareTo(BigDecimal.valueOf(LEAST)) >= 0
                && halves.compareTo(BigDecimal.valueOf(MOST)) <= 0;
        return size ? Optional.of(halves.intValueExact()) : Optional.empty();
    }

    static BigDecimal mm(int halves) {
        return BigDecimal.valueOf(halves * 5L, 1);
    }

    /** As it stands on a drawer: {@code 33.5 mm}, {@code 31 mm}. */
    static String text(int halves) {
        return (halves % 2 == 0 ? String.valueOf(halves / 2) : mm(halves).toPlainString()) + " mm";
    }

    /** Diameter less size, micrometres. */
    static int off(BigDecimal mm, int halves) {
        return mm.subtract(mm(halves))
                .movePointRight(3)
                .setScale(0, RoundingMode.HALF_UP)
                .intValueExact();
    }
}
