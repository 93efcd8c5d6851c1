package hornbook.viewer.gauges;

import hornbook.shared.thread.ThreadWords;
import java.util.Optional;

/**
 * The fields of the thread pane as they stand.
 *
 * @param hole whether a hole was measured, not a screw
 * @param pitch crest to crest, or empty
 * @param tpi threads to the inch by gauge, or empty
 * @param turns counted over {@code over}
 * @param form degrees, where looked at
 * @param wall round a stripped hole
 */
record ThreadAsked(
        boolean hole, String size, String pitch, String tpi, String turns, String over, String form, String wall) {
    static final ThreadAsked NOTHING = new ThreadAsked(false, "", "", "", "", "", "", "");

    boolean blank() {
        return size.isBlank();
    }

    /** As the reader of threads wants it; a count of turns waits for its length. */
    ThreadWords words() {
        boolean counted = !turns.isBlank() && !over.isBlank();
        return new ThreadWords(
                Typed.in(hole ? "" : size),
                Typed.in(hole ? size : ""),
                Typed.in(pitch),
                Typed.in(tpi),
                Typed.in(counted ? turns : ""),
                Typed.in(counted ? over : ""),
                Typed.in(form),
                Optional.empty(),
                Typed.in(wall),
                Optional.empty());
    }

    ThreadAsked inHole(boolean yes) {
        return new ThreadAsked(yes, size, pitch, tpi, turns, over, form, wall);
    }

    ThreadAsked withSize(String text) {
        return new ThreadAsked(hole, text, pitch, tpi, turns, over, form, wall);
    }

    ThreadAsked withPitch(String text) {
        return new ThreadAsked(hole, size, text, tpi, turns, over, form, wall);
    }

    ThreadAsked withTpi(String text) {
        return new ThreadAsked(hole, size, pitch, text, turns, over, form, wall);
    }

    ThreadAsked withTurns(String text) {
        return new ThreadAsked(hole, size, pitch, tpi, text, over, form, wall);
    }

    ThreadAsked withOver(String text) {
        return new ThreadAsked(hole, size, pitch, tpi, turns, text, form, wall);
    }

    ThreadAsked withForm(String text) {
        return new ThreadAsked(hole, size, pitch, tpi, turns, over, text, wall);
    }

    ThreadAsked withWall(String text) {
        return new ThreadAsked(hole, size, pitch, tpi, turns, over, form, text);
    }
}
