package hornbook.catalogue.exchange;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/** How numbers stand in the files: shortest, with a fixed number of places, or as JSON writes a real number. */
final class Numbers {
    private Numbers() {}

    static String shortest(@Nullable Double number) {
        if (number == null) {
            return "";
        }
        BigDecimal plain = BigDecimal.valueOf(number).stripTrailingZeros();
        return plain.toPlainString();
    }

    /** At least so many places, more where they are needed to say the number. */
    static String places(@Nullable Double number, int places) {
        if (number == null) {
            return "";
        }
        BigDecimal plain = BigDecimal.valueOf(number);
        BigDecimal least = plain.stripTrailingZeros();
        return (least.scale() > places ? least : plain.setScale(places, RoundingMode.UNNECESSARY)).toPlainString();
    }

    static String whole(@Nullable Integer number) {
        return number == null ? "" : number.toString();
    }
}
