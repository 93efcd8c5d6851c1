package hornbook.catalogue.entry;

/** Whether a thing may be used on something; several may hold, the hardest wins. */
public enum Verdict implements Worded {
    /** Usual, with the product's own sheet. */
    OK("ok"),
    /** Only as the reason and the alternative say, tried on a hidden spot. */
    CARE("care"),
    /** Ruins it or hurts somebody. */
    STOP("stop");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /** The word as written in files and commands. */
    @Override
    public String word() {
        return word;
    }
}
