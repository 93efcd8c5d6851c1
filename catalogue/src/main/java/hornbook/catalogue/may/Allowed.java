package hornbook.catalogue.may;

import com.fasterxml.jackson.annotation.JsonValue;
import hornbook.catalogue.entry.Verdict;

/** Whether it may be used, hardest last but for what is not known. */
public enum Allowed {
    /** No entry says anything: try it where it does not show, or ask. Never taken as allowed. */
    NOT_KNOWN("not known"),
    /** Usual, with the product's own sheet. */
    OK("ok"),
    /** Only as the reason and the alternative say, tried on a hidden spot. */
    CARE("care"),
    /** Ruins it or hurts somebody. */
    STOP("stop");

    private final String word;

    Allowed(String word) {
        this.word = word;
    }

    /** The word as written in commands and JSON. */
    @JsonValue
    public String word() {
        return word;
    }

    static Allowed of(Verdict verdict) {
        return switch (verdict) {
            case OK -> OK;
            case CARE -> CARE;
            case STOP -> STOP;
        };
    }
}
