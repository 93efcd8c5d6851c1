package hornbook.catalogue.entry;

/** What knowing a trait is good for. */
public enum Purpose implements Worded {
    /** Tells makes and eras apart. */
    ID("ID"),
    /** Decides how to take down. */
    TEAR("TEAR"),
    /** Decides which part fits. */
    FIT("FIT"),
    /** Moves the estimate. */
    PRICE("PRICE"),
    /** Safety or ruin. */
    RISK("RISK");

    private final String word;

    Purpose(String word) {
        this.word = word;
    }

    /** The word as written in files and commands. */
    @Override
    public String word() {
        return word;
    }
}
