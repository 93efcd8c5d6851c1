package hornbook.catalogue.entry;

/** How a trait is answered. */
public enum TraitKind implements Worded {
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
    @Override
    public String word() {
        return word;
    }
}
