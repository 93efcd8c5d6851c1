package hornbook.catalogue.entry;

/** How a cup stands when nobody touches its key. */
public enum Rest implements Worded {
    /** Held open by its spring. */
    OPEN("open"),
    /** Held shut by its spring. */
    CLOSED("closed");

    private final String word;

    Rest(String word) {
        this.word = word;
    }

    /** The word as written in files and commands. */
    @Override
    public String word() {
        return word;
    }
}
