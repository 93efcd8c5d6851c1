package hornbook.catalogue.entry;

/** Which way an operation changes a dimension. */
public enum Direction implements Worded {
    /** Takes away. */
    SMALLER("smaller"),
    /** Opens or adds. */
    LARGER("larger"),
    /** Both ways. */
    EITHER("either"),
    /** Makes it what is wanted, whatever it was. */
    SETS("sets");

    private final String word;

    Direction(String word) {
        this.word = word;
    }

    /** The word as written in files and commands. */
    @Override
    public String word() {
        return word;
    }
}
