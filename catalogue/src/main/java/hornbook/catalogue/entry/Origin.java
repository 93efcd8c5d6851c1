package hornbook.catalogue.entry;

/** Where a tool comes from. */
public enum Origin implements Worded {
    /** Sold as such. */
    BOUGHT("bought"),
    /** Made in the shop. */
    MADE("made");

    private final String word;

    Origin(String word) {
        this.word = word;
    }

    /** The word as written in files and commands. */
    @Override
    public String word() {
        return word;
    }
}
