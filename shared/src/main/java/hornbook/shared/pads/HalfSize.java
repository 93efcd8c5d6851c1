package hornbook.shared.pads;

import hornbook.shared.measure.Length;
import hornbook.shared.measure.LengthUnit;
import hornbook.shared.measure.PadSize;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** Sizes in whole half millimetres: {@code 37} is 18.5 mm. */
final class HalfSize {
    /** The largest made. */
    static final int MOST = 144;

    private HalfSize() {}

    /** The ruled size of a cup, nothing where no pad is made so small or so large. */
    static Optional<Integer> ruled(BigDecimal mm, PadSize.Tie tie) {
        return PadSize.forCup(Length.of(mm, LengthUnit.MILLIMETRE), tie).found().map(PadSize::halves);
    }

    /** The size of a pad on hand, nothing where it is no whole half millimetre. */
    static Optional<Integer> exactly(BigDecimal mm) {
        return ruled(mm, PadSize.Tie.UP).filter(halves -> mm(halves).compareTo(mm) == 0);
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
