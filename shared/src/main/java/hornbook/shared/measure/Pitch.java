package hornbook.shared.measure;

import java.math.BigDecimal;

/**
 * The pitch of a thread, kept as its standard states it, so that 48 to the inch stays exactly that.
 *
 * @param amount millimetres, or threads per inch
 * @param counted whether {@code amount} is threads per inch
 */
public record Pitch(BigDecimal amount, boolean counted) implements Comparable<Pitch> {

    /**
     * @throws IllegalArgumentException if not above nought
     */
    public Pitch {
        if (amount.signum() <= 0) {
            throw new IllegalArgumentException("a pitch is more than nought");
        }
        amount = amount.stripTrailingZeros();
    }

    public static Pitch ofMillimetres(String decimal) {
        return new Pitch(new BigDecimal(decimal), false);
    }

    public static Pitch perInch(int threads) {
        return new Pitch(BigDecimal.valueOf(threads), true);
    }

    /** Crest to crest, in mm. */
    public double mm() {
        return counted ? 25.4 / amount.doubleValue() : amount.doubleValue();
    }

    public double perInch() {
        return counted ? amount.doubleValue() : 25.4 / amount.doubleValue();
    }

    /** By size, without rounding: 25.4 to the inch is 1 mm. */
    @Override
    public int compareTo(Pitch other) {
        if (counted == other.counted) {
            return counted ? other.amount.compareTo(amount) : amount.compareTo(other.amount);
        }
        BigDecimal product = amount.multiply(other.amount);
        int against = product.compareTo(BigDecimal.valueOf(254, 1));
        return counted ? -against : against;
    }

    /** {@code 48 tpi} or {@code 0.45 mm}. */
    @Override
    public String toString() {
        return amount.toPlainString() + (counted ? " tpi" : " mm");
    }
}
