package hornbook.catalogue.entry;

import com.fasterxml.jackson.annotation.JsonValue;

/** Whether a thing may be used on something; several may hold, the hardest wins. */
public enum Verdict {
    /** Usual, with the product's own sheet. */
    OK("ok"),
    /** Only as the reason and the alternative say, tried on a hidden spot. */
    CARE("care"),
    /** Ruins it or hurts somebody. */
    STOP("stop");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /** The word as written in files and commands. */
    @JsonValue
    public String word() {
        return word;
    }
}
