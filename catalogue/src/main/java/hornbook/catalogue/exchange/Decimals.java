package hornbook.catalogue.exchange;

import java.math.BigDecimal;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Numbers as the exchange files write them: decimal point, no exponent. */
final class Decimals {
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,12}(?:\\.\\d{1,9})?");

    private Decimals() {}

    static double read(String field, String text) {
        if (!NUMBER.matcher(text.strip()).matches()) {
            throw new BadCell(field, "“" + text + "” is not a number: write it with digits and a decimal point");
        }
        return Double.parseDouble(text.strip());
    }

    /** With as few decimals as it takes, but at least so many; nothing for nothing. */
    static String write(@Nullable Double value, int decimals) {
        if (value == null) {
            return "";
        }
        BigDecimal exact = BigDecimal.valueOf(value).stripTrailingZeros();
        return exact.setScale(Math.max(decimals, Math.max(0, exact.scale()))).toPlainString();
    }

    static String shortest(double value) {
        return write(value, 0);
    }
}
