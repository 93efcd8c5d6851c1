package hornbook.catalogue.entry;

import com.fasterxml.jackson.annotation.JsonValue;

/** How much is at stake, gravest first. */
public enum CautionLevel {
    /** May ruin the horn or hurt somebody: read it before touching. */
    STOP("stop"),
    /** Costs a part or the finish. */
    CARE("care"),
    /** Costs time. */
    NOTE("note");

    private final String word;

    CautionLevel(String word) {
        this.word = word;
    }

    /** The word as written in files and commands. */
    @JsonValue
    public String word() {
        return word;
    }
}
