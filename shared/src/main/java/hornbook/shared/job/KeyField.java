package hornbook.shared.job;

/** What can be measured on a key of a horn. Numbers are mm, as {@code 2.38}. */
public enum KeyField {
    ROD("rod", "rod", "Rod", false),
    TURNS_ON("turns-on", "turns_on", "Turns on (rod, pivots, sleeves)", false),
    ROD_DIAMETER("rod-diameter", "diameter_mm", "Rod diameter", true),
    ROD_LENGTH("rod-length", "length_mm", "Rod length", true),
    THREAD("thread", "thread", "Thread", false),
    DRAWS_OUT("draws-out", "draws_out", "Draws out at", false),
    SPRING("spring", "spring", "Spring (needle, flat)", false),
    SPRING_SIZE("spring-size", "spring_mm", "Spring wire or strip", true),
    SPRING_LENGTH("spring-length", "spring_length_mm", "Spring length", true),
    CUP_INSIDE("cup-inside", "cup_inside_mm", "Cup inside", true),
    RIM_INSIDE("rim-inside", "rim_inside_mm", "Rim inside", true),
    RIM_OUTSIDE("rim-outside", "rim_outside_mm", "Rim outside", true),
    RESONATOR("resonator", "resonator_mm", "Resonator", true);

    private final String word;
    private final String column;
    private final String title;
    private final boolean millimetres;

    KeyField(String word, String column, String title, boolean millimetres) {
        this.word = word;
        this.column = column;
        this.title = title;
        this.millimetres = millimetres;
    }

    /** As written in commands. */
    public String word() {
        return word;
    }

    /** The column of a map row that holds it. */
    String column() {
        return column;
    }

    public String title() {
        return title;
    }

    /** Is it a length, and not words? */
    public boolean millimetres() {
        return millimetres;
    }
}
