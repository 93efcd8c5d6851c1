package hornbook.shared.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads numbers and fractions with their unit: {@code 2,5 mm}, {@code .108"}, {@code 1-1/4 in}, {@code 5 64ths}. */
final class PlainSizes {
    static final String DECIMAL = "(?:\\d+(?:[.,]\\d+)?|[.,]\\d+)";
    static final String FRACTION = "(?:(\\d+)[ -])?(\\d+) ?/ ?(\\d+)";
    private static final Pattern SIZE = Pattern.compile("(?:[øØ⌀] ?|dia(?:meter|\\.)? )?(?:" + FRACTION + "|(" + DECIMAL
            + ")) ?(\"|(?!drill|dia)[a-zA-Z]+\\.?)?(?: dia(?:meter|\\.)?)?(?: drill)?");
    private static final Pattern PARTS = Pattern.compile("(\\d+) ?(16ths?|32nds?|64ths?)");
    private static final Pattern PLAIN_NUMBER = Pattern.compile("[-+]?" + DECIMAL);
    private static final int LONGEST_NUMBER = 24;
    private static final BigDecimal MOST_MILLIMETRES = BigDecimal.valueOf(100_000);

    private PlainSizes() {}

    /** Reads a text that {@link Writing#plain} has been over; empty if it is not of this form at all. */
    static Optional<Reading<WrittenSize>> read(String plain) {
        Matcher parts = PARTS.matcher(plain);
        if (parts.matches()) {
            return read(parts.group(1) + "/" + parts.group(2).substring(0, 2) + " in");
        }
        Matcher size = SIZE.matcher(plain);
        if (!size.matches()) {
            return Optional.empty();
        }
        if (plain.length() > LONGEST_NUMBER + 10) {
            return Optional.of(Reading.refused(plain, "has more digits than any size needs"));
        }
        String word = size.group(5);
        Optional<LengthUnit> unit = word == null ? Optional.empty() : LengthUnit.named(word);
        if (word != null && unit.isEmpty()) {
            return Optional.of(
                    Reading.refused(plain, "is in no unit read here (" + word + "): write mm, cm, µm, in, \" or thou"));
        }
        return Optional.of(amount(plain, size, unit).then(written -> withinReason(plain, written)));
    }

    /** A bare number, exact, with a point or a comma; empty if the text is anything else. */
    static Optional<BigDecimal> number(String plain) {
        return PLAIN_NUMBER.matcher(plain).matches() && plain.length() <= LONGEST_NUMBER
                ? Optional.of(decimal(plain))
                : Optional.empty();
    }

    private static Reading<WrittenSize> amount(String plain, Matcher size, Optional<LengthUnit> unit) {
        String decimal = size.group(4);
        if (decimal != null) {
            return Reading.read(new WrittenSize(decimal(decimal), BigInteger.ONE, unit, false));
        }
        return fraction(plain, size.group(1), new BigInteger(size.group(2)), new BigInteger(size.group(3)), unit);
    }

    private static Reading<WrittenSize> fraction(
            String plain, @Nullable String whole, BigInteger above, BigInteger below, Optional<LengthUnit> unit) {
        if (below.signum() == 0) {
            return Reading.refused(
                    plain, "divides by nought; a wire gauge number is written with its gauge, such as 5/0 SWG");
        }
        if (whole != null && above.compareTo(below) >= 0) {
            return Reading.refused(plain, "has a fraction that is not below one");
        }
        boolean inches = below.bitCount() == 1 && below.bitLength() <= 8 && below.bitLength() > 1;
        if (unit.isEmpty() && !inches) {
            return Reading.refused(plain, "is no usual fraction of an inch: write its unit, or a decimal");
        }
        BigInteger ones = whole == null ? BigInteger.ZERO : new BigInteger(whole);
        BigDecimal total = new BigDecimal(ones.multiply(below).add(above));
        return Reading.read(new WrittenSize(total, below, unit, inches));
    }

    private static Reading<WrittenSize> withinReason(String plain, WrittenSize written) {
        BigDecimal least = written.numerator().divideToIntegralValue(new BigDecimal(written.denominator()));
        BigDecimal most = MOST_MILLIMETRES
                .multiply(BigDecimal.valueOf(1_000_000))
                .divideToIntegralValue(BigDecimal.valueOf(
                        written.unit().orElse(LengthUnit.INCH).nanometres()));
        return least.compareTo(most) > 0
                ? Reading.refused(plain, "is over 100 m: no size of ours")
                : Reading.read(written);
    }

    private static BigDecimal decimal(String written) {
        return new BigDecimal(written.replace(',', '.'));
    }
}
