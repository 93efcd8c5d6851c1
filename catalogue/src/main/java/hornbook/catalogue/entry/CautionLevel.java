package hornbook.catalogue.entry;

/** How much is at stake, gravest first. */
public enum CautionLevel implements Worded {
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
    @Override
    public String word() {
        return word;
    }
}
