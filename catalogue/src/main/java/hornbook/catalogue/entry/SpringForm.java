package hornbook.catalogue.entry;

/** The two sorts of key spring. */
public enum SpringForm implements Worded {
    /** Round wire driven into a post. */
    NEEDLE("needle"),
    /** Strip screwed under a key. */
    FLAT("flat");

    private final String word;

    SpringForm(String word) {
        this.word = word;
    }

    /** The word as written in files and commands. */
    @Override
    public String word() {
        return word;
    }
}
