package hornbook.shared.thread;

import hornbook.shared.measure.Length;

/** How a pitch was found. */
public sealed interface PitchReading {
    /**
     * Measured, or read off a metric leaf.
     *
     * @param sigma standard uncertainty
     */
    record Measured(Length pitch, Length sigma) implements PitchReading {}

    /** A leaf of an inch pitch gauge, in threads per inch. */
    record Leaf(int perInch) implements PitchReading {}

    /** Crest to crest, in mm, as read. */
    default double mm() {
        return switch (this) {
            case Measured(Length pitch, Length _) -> pitch.mm();
            case Leaf(int perInch) -> 25.4 / perInch;
        };
    }
}
