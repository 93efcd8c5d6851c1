package hornbook.viewer.hornmap;

import java.util.Locale;

/**
 * What the drawing says at a cup.
 *
 * @param cup id
 * @param title what it is called
 * @param value what stands beside it; empty where nothing is known
 * @param tone how surely it stands there
 * @param described for a screen reader
 */
public record CupMark(String cup, String title, String value, Tone tone, String described) {
    /** How surely a value stands beside a cup. */
    public enum Tone {
        /** Nothing is known. */
        BLANK,
        /** Not of this horn: its model's, or proposed. */
        SUPPOSED,
        /** Read on this horn. */
        READ,
        /** Read, and out of the usual. */
        HEED;

        String style() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
