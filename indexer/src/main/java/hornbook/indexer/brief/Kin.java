package hornbook.indexer.brief;

import com.fasterxml.jackson.annotation.JsonValue;

/** How near a past job's horn is to the one in hand, nearest first. */
public enum Kin {
    /** The same horn. */
    THIS_HORN("this horn"),
    /** The same model. */
    MODEL("model"),
    /** The same maker's pattern, another instrument. */
    PATTERN("pattern"),
    /** Made by somebody whose horns bore the same seller's name. */
    SELLER("seller"),
    /** The same maker. */
    MAKE("make");

    private final String word;

    Kin(String word) {
        this.word = word;
    }

    /** The word as printed. */
    @JsonValue
    public String word() {
        return word;
    }
}
