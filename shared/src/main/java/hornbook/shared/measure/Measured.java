package hornbook.shared.measure;

import java.util.Optional;

/**
 * A size with what is known of its doubt.
 *
 * @param low least it may be
 * @param nominal as read; the middle of a range
 * @param high most it may be
 * @param kind how it was written
 */
public record Measured(Length low, Length nominal, Length high, Kind kind) {

    /** How a measured size was written. */
    public enum Kind {
        /** One number; its doubt is not stated. */
        SINGLE,
        /** {@code 2.95±0.02 mm}. */
        PLUS_MINUS,
        /** {@code 2.72..2.74 mm}. */
        RANGE
    }

    public static Measured single(Length length) {
        return new Measured(length, length, length, Kind.SINGLE);
    }

    public static Measured plusMinus(Length nominal, Length doubt) {
        return new Measured(nominal.minus(doubt), nominal, nominal.plus(doubt), Kind.PLUS_MINUS);
    }

    public static Measured range(Length low, Length high) {
        Length middle = new Length(low.nanometres() + (high.nanometres() - low.nanometres()) / 2);
        return new Measured(low, middle, high, Kind.RANGE);
    }

    /**
     * Standard uncertainty in mm; empty where none is stated. A stated ± is taken whole as one standard deviation (on
     * the safe side of a limit); a range as flat, width/√12.
     */
    public Optional<Double> sigma() {
        return switch (kind) {
            case SINGLE -> Optional.empty();
            case PLUS_MINUS -> Optional.of(high.minus(nominal).mm());
            case RANGE -> Optional.of(high.minus(low).mm() / Math.sqrt(12));
        };
    }

    /** Whether two sizes can be the same one, each widened by half of {@code tolerance} on either side. */
    public boolean meets(Measured other, Length tolerance) {
        return low.minus(other.high).compareTo(tolerance) <= 0
                && other.low.minus(high).compareTo(tolerance) <= 0;
    }

    @Override
    public String toString() {
        return switch (kind) {
            case SINGLE -> nominal.toString();
            case PLUS_MINUS -> nominal + " ± " + high.minus(nominal).inMillimetres();
            case RANGE -> low + " to " + high;
        };
    }
}
