package hornbook.shared.pads;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lengths of cups and pads as written, in mm or inch. */
final class Millimetres {
    private static final BigDecimal INCH = new BigDecimal("25.4");
    private static final Pattern FORM =
            Pattern.compile("(\\d{0,4}(?:[.,]\\d{1,6})?)\\s*(mm|in|inch|\"|)", Pattern.CASE_INSENSITIVE);

    private Millimetres() {}

    static Optional<BigDecimal> read(String text) {
        Matcher form = FORM.matcher(text.strip());
        if (!form.matches() || form.group(1).isEmpty()) {
            return Optional.empty();
        }
        BigDecimal number = new BigDecimal(form.group(1).replace(',', '.'));
        boolean mm = form.group(2).isEmpty() || form.group(2).equalsIgnoreCase("mm");
        return Optional.of(mm ? number : number.multiply(INCH));
    }

    /** A dimension of a lot: {@code size} of {@code size=31 mm;thickness=4.0 mm}. */
    static Optional<BigDecimal> dimension(String dimensions, String name) {
        for (String part : dimensions.split(";")) {
            int equals = part.indexOf('=');
            if (equals > 0 && part.substring(0, equals).strip().equals(name)) {
                return read(part.substring(equals + 1));
            }
        }
        return Optional.empty();
    }
}
