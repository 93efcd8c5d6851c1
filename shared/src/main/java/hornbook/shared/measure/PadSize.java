package hornbook.shared.measure;

import java.math.BigDecimal;

/**
 * A pad size in half millimetres, 6.0 to 72.0 mm: 133 sizes.
 *
 * @param halves twice the size in millimetres
 */
public record PadSize(int halves) implements Comparable<PadSize> {
    private static final int LEAST = 12;
    private static final int MOST = 144;
    private static final long HALF_MILLIMETRE = 500_000;

    /** Which way a cup that lies just between two sizes goes: up suits felt and leather, down stiff pads and rings. */
    public enum Tie {
        UP,
        DOWN
    }

    /**
     * @throws IllegalArgumentException outside 12 to 144
     */
    public PadSize {
        if (halves < LEAST || halves > MOST) {
            throw new IllegalArgumentException("pads run from 6.0 to 72.0 mm");
        }
    }

    /**
     * The size for a cup: the nearest half millimetre; a tie (x.25, x.75) goes up, floor(2d + 1/2)/2, or down if asked.
     *
     * @param inside the cup's inside diameter
     */
    public static Reading<PadSize> forCup(Length inside, Tie tie) {
        long doubled = 2 * inside.nanometres();
        long halves = tie == Tie.UP
                ? Math.floorDiv(doubled + HALF_MILLIMETRE, 2 * HALF_MILLIMETRE)
                : Math.ceilDiv(doubled - HALF_MILLIMETRE, 2 * HALF_MILLIMETRE);
        if (halves < LEAST || halves > MOST) {
            return Reading.refused(inside.inMillimetres(), "is no pad size: pads run from 6.0 to 72.0 mm");
        }
        return Reading.read(new PadSize((int) halves));
    }

    public Length diameter() {
        return new Length(halves * HALF_MILLIMETRE);
    }

    @Override
    public int compareTo(PadSize other) {
        return Integer.compare(halves, other.halves);
    }

    /** With its one decimal: {@code 18.0 mm}. */
    @Override
    public String toString() {
        return BigDecimal.valueOf(halves * 5L, 1) + " mm";
    }
}
