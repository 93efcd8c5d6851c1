package hornbook.shared.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A length, exact in whole nanometres; differences and gauge errors may be negative.
 *
 * <p>Every decimal of a millimetre down to the sixth, every thousandth of an inch and every 64th of an inch is a whole
 * number of nanometres, so none of them is rounded. What is finer is rounded once, on the way in, to the nearest
 * nanometre, halves away from zero.
 */
public record Length(long nanometres) implements Comparable<Length> {
    public static final Length ZERO = new Length(0);

    /**
     * An amount in a unit.
     *
     * @throws ArithmeticException if it is more than nine million kilometres
     */
    public static Length of(BigDecimal amount, LengthUnit unit) {
        return new Length(amount.multiply(BigDecimal.valueOf(unit.nanometres()))
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact());
    }

    /** Millimetres written as a plain decimal, such as {@code "2.7432"}. */
    public static Length ofMillimetres(String decimal) {
        return of(new BigDecimal(decimal), LengthUnit.MILLIMETRE);
    }

    /** Millimetres as computed, rounded to the nearest nanometre. */
    public static Length ofMillimetres(double millimetres) {
        return of(BigDecimal.valueOf(millimetres), LengthUnit.MILLIMETRE);
    }

    /** Inches written as a plain decimal, such as {@code "0.108"}. */
    public static Length ofInches(String decimal) {
        return of(new BigDecimal(decimal), LengthUnit.INCH);
    }

    /** Millimetres, exactly, without trailing noughts. */
    public BigDecimal millimetres() {
        return BigDecimal.valueOf(nanometres, 6).stripTrailingZeros();
    }

    /** This length in a unit, as near as a double holds it. */
    public double in(LengthUnit unit) {
        return (double) nanometres / unit.nanometres();
    }

    /** Millimetres, for reckoning. */
    public double mm() {
        return in(LengthUnit.MILLIMETRE);
    }

    public Length plus(Length other) {
        return new Length(Math.addExact(nanometres, other.nanometres));
    }

    public Length minus(Length other) {
        return new Length(Math.subtractExact(nanometres, other.nanometres));
    }

    public Length abs() {
        return new Length(Math.absExact(nanometres));
    }

    @Override
    public int compareTo(Length other) {
        return Long.compare(nanometres, other.nanometres);
    }

    /** To the micrometre: {@code "2.743 mm"}. */
    public String inMillimetres() {
        return trimmed(BigDecimal.valueOf(nanometres, 6).setScale(3, RoundingMode.HALF_UP), 0) + " mm";
    }

    /** To the ten-thousandth, as the trade writes it, without the nought before the point: {@code ".108 in"}. */
    public String inInches() {
        BigDecimal inches = BigDecimal.valueOf(nanometres)
                .divide(BigDecimal.valueOf(LengthUnit.INCH.nanometres()), 4, RoundingMode.HALF_UP);
        return trimmed(inches, 3).replaceFirst("^(-?)0\\.", "$1.") + " in";
    }

    /** Both units, the asked one first: {@code ".108 in (2.743 mm)"}; inches and thou put the inch first. */
    public String text(LengthUnit first) {
        boolean inch = first == LengthUnit.INCH || first == LengthUnit.THOU;
        return inch ? inInches() + " (" + inMillimetres() + ")" : inMillimetres() + " (" + inInches() + ")";
    }

    /** Both units, millimetres first: {@code "2.743 mm (.108 in)"}. */
    @Override
    public String toString() {
        return text(LengthUnit.MILLIMETRE);
    }

    private static String trimmed(BigDecimal value, int atLeast) {
        BigDecimal bare = value.stripTrailingZeros();
        return value.setScale(Math.max(atLeast, bare.scale()), RoundingMode.UNNECESSARY)
                .toPlainString();
    }
}
