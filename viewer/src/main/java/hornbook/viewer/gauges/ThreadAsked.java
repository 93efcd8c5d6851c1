package hornbook.viewer.gauges;

import hornbook.shared.thread.ThreadWords;
import java.util.Optional;

/**
 * The fields of the thread pane as they stand.
 *
 * @param hole whether a hole was measured, not a screw
 */
record ThreadAsked(boolean hole, Written<Field> fields) {
    static final ThreadAsked NOTHING = new ThreadAsked(false, Written.nothing());

    /** What can be told: pitch crest to crest, or threads to the inch by gauge, or turns over a length. */
    enum Field {
        SIZE,
        PITCH,
        TPI,
        TURNS,
        OVER,
        FORM,
        WALL
    }

    boolean blank() {
        return fields.told(Field.SIZE).isEmpty();
    }

    /** As the reader of threads wants it; a count of turns waits for its length. */
    ThreadWords words() {
        boolean counted =
                fields.told(Field.TURNS).isPresent() && fields.told(Field.OVER).isPresent();
        Optional<String> size = fields.told(Field.SIZE);
        return new ThreadWords(
                size.filter(across -> !hole),
                size.filter(across -> hole),
                fields.told(Field.PITCH),
                fields.told(Field.TPI),
                fields.told(Field.TURNS).filter(turns -> counted),
                fields.told(Field.OVER).filter(over -> counted),
                fields.told(Field.FORM),
                Optional.empty(),
                fields.told(Field.WALL),
                Optional.empty());
    }

    ThreadAsked inHole(boolean yes) {
        return new ThreadAsked(yes, fields);
    }

    ThreadAsked with(Field field, String text) {
        return new ThreadAsked(hole, fields.with(field, text));
    }
}
