package hornbook.catalogue.entry;

import com.fasterxml.jackson.annotation.JsonValue;

/** How a trait is answered. */
public enum TraitKind {
    /** Exactly one of its values. */
    ONE("one"),
    /** Any number of its values; each is there or not. */
    MANY("many"),
    /** A measurement in the trait's unit. */
    NUMBER("number"),
    /** Text, letter for letter, as read off the horn. */
    MARK("mark");

    private final String word;

    TraitKind(String word) {
        this.word = word;
    }

    /** The word as written in files and commands. */
    @JsonValue
    public String word() {
        return word;
    }
}
