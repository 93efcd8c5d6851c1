package hornbook.catalogue.entry;

import com.fasterxml.jackson.annotation.JsonValue;

/** Where a tool comes from. */
public enum Origin {
    /** Sold as such. */
    BOUGHT("bought"),
    /** Made in the shop. */
    MADE("made");

    private final String word;

    Origin(String word) {
        this.word = word;
    }

    /** The word as written in files and commands. */
    @JsonValue
    public String word() {
        return word;
    }
}
