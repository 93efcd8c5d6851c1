package hornbook.shared.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The two numbers of an inch thread's designation: size (a number or a fraction) and threads per inch. */
record InchSize(Length major, Pitch pitch) {
    private static final Pattern DESIGNATION = Pattern.compile("(\\d+(?:/\\d+)?)-(\\d+)\\b.*");
    private static final int LARGEST_NUMBER = 16;

    /** Of a designation of our own tables. */
    static InchSize of(String designation) {
        Matcher match = DESIGNATION.matcher(designation);
        if (!match.matches()) {
            throw new IllegalStateException("no inch designation: " + designation);
        }
        return new InchSize(major(match.group(1)).orElseThrow(), Pitch.perInch(Integer.parseInt(match.group(2))));
    }

    /**
     * Major diameter of a size: a number n is 0.060 + 0.013 n inch (ASME B1.1), a fraction is itself. Empty above No.
     * 16 and for a fraction by nought or of more than an inch.
     */
    static Optional<Length> major(String size) {
        int slash = size.indexOf('/');
        if (slash < 0) {
            int number = Integer.parseInt(size);
            BigDecimal inches = BigDecimal.valueOf(60 + 13L * number, 3);
            return number <= LARGEST_NUMBER ? Optional.of(Length.of(inches, LengthUnit.INCH)) : Optional.empty();
        }
        BigDecimal above = new BigDecimal(size.substring(0, slash));
        BigDecimal below = new BigDecimal(size.substring(slash + 1));
        if (below.signum() == 0 || above.signum() == 0 || above.compareTo(below) > 0) {
            return Optional.empty();
        }
        BigDecimal nanometres =
                above.multiply(BigDecimal.valueOf(LengthUnit.INCH.nanometres())).divide(below, 0, RoundingMode.HALF_UP);
        return Optional.of(new Length(nanometres.longValueExact()));
    }
}
