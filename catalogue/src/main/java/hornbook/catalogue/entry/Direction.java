package hornbook.catalogue.entry;

import com.fasterxml.jackson.annotation.JsonValue;

/** Which way an operation changes a dimension. */
public enum Direction {
    /** Takes away. */
    SMALLER("smaller"),
    /** Opens or adds. */
    LARGER("larger"),
    /** Both ways. */
    EITHER("either"),
    /** Makes it what is wanted, whatever it was. */
    SETS("sets");

    private final String word;

    Direction(String word) {
        this.word = word;
    }

    /** The word as written in files and commands. */
    @JsonValue
    public String word() {
        return word;
    }
}
