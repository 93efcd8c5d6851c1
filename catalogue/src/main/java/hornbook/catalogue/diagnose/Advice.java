package hornbook.catalogue.diagnose;

import com.fasterxml.jackson.annotation.JsonValue;

/** What to do now. */
public enum Advice {
    /** Make the next check. */
    CHECK("check"),
    /** The cause is as good as found: cure it, then play the horn again. */
    CURE("cure"),
    /** Nothing that is known here fits: stop, and ask somebody or look wider. */
    ASK("ask");

    private final String word;

    Advice(String word) {
        this.word = word;
    }

    /** The word as written in commands and JSON. */
    @JsonValue
    public String word() {
        return word;
    }
}
