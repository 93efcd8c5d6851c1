package hornbook.catalogue.entry;

/** How a finding comes to be. */
public enum FindingKind implements Worded {
    /** Read off a gauge. */
    MEASURE("measure"),
    /** Reckoned from others. */
    DERIVED("derived"),
    /** Counted. */
    COUNT("count"),
    /** Seen, heard or felt, in words. */
    OBSERVATION("observation");

    private final String word;

    FindingKind(String word) {
        this.word = word;
    }

    /** The word as written in files and commands. */
    @Override
    public String word() {
        return word;
    }
}
