package hornbook.viewer.window;

import java.util.Optional;

/**
 * Hears the code of a drawer's label among what is typed: a reader types {@code hornbook:d-card-r5c5} and Enter like a
 * keyboard. Until the colon the letters pass, as a person may mean them; what follows is the code's alone. Knows no
 * widget.
 */
final class Scan {
    /** What a reader has typed before it is known to be one. */
    static final String NAME = "hornbook";

    private static final char ENDS_NAME = ':';

    /**
     * A reader types a letter in some hundredths of a second; after this nobody reads any more. Long, as a machine that
     * is busy meanwhile must not let half a code fall into a drawer as counts.
     */
    private static final long LONGEST_PAUSE_MS = 10_000;

    private final StringBuilder code = new StringBuilder();
    private int matched;
    private boolean reading;
    private long last;

    /** Is a code being read? */
    boolean reading(long now) {
        forgetIfOld(now);
        return reading;
    }

    /** Takes the next letter, at that millisecond; whether it belongs to a code and to nobody else. */
    boolean typed(char letter, long now) {
        forgetIfOld(now);
        last = now;
        if (reading) {
            code.append(letter);
            return true;
        }
        if (matched == NAME.length() && letter == ENDS_NAME) {
            reading = true;
            return true;
        }
        boolean next = matched < NAME.length() && letter == NAME.charAt(matched);
        matched = next ? matched + 1 : letter == NAME.charAt(0) ? 1 : 0;
        return false;
    }

    /** Ends the code; nothing where none was being read. */
    Optional<String> ended(long now) {
        forgetIfOld(now);
        Optional<String> read = reading && !code.isEmpty() ? Optional.of(code.toString()) : Optional.empty();
        forget();
        return read;
    }

    private void forgetIfOld(long now) {
        if (reading && now - last > LONGEST_PAUSE_MS) {
            forget();
        }
    }

    private void forget() {
        code.setLength(0);
        matched = 0;
        reading = false;
    }
}
