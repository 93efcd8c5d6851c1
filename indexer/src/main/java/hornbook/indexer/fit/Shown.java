package hornbook.indexer.fit;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as people read them: to the micrometre, without trailing noughts. */
final class Shown {
    private Shown() {}

    static String number(double value) {
        return rounded(value, 3).stripTrailingZeros().toPlainString();
    }

    static String mm(double value) {
        return number(value) + " mm";
    }

    /** For records: minutes and charges to the hundredth, sizes to the micrometre. */
    static double toPlaces(double value, int places) {
        return rounded(value, places).doubleValue();
    }

    private static BigDecimal rounded(double value, int places) {
        return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
    }
}
