package hornbook.catalogue.entry;

/** What a way of looking costs the repairer, cheapest first. */
public enum Look implements Worded {
    /** A photo or a glance across the bench. */
    GLANCE("glance", 1),
    /** Pick it up, turn it, work the keys. */
    HAND("hand", 2),
    /** Loupe, rule, caliper, magnet or lamp. */
    GAUGE("gauge", 5),
    /** Take off one key. */
    KEY_OFF("key-off", 20),
    /** Take out a pad or more. */
    PAD_OFF("pad-off", 40);

    private final String word;
    private final int cost;

    Look(String word, int cost) {
        this.word = word;
        this.cost = cost;
    }

    /** The word as written in files and commands. */
    @Override
    public String word() {
        return word;
    }

    /** Effort relative to a glance: 1, 2, 5, 20, 40 (common practice, from memory). */
    public int cost() {
        return cost;
    }

    /** Whether this look takes a part off the horn, and so needs the owner's yes. */
    public boolean removesAPart() {
        return this == KEY_OFF || this == PAD_OFF;
    }
}
