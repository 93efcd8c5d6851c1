package hornbook.shared.job;

import hornbook.shared.shop.BadInput;
import java.util.List;

/** What can be measured on a key of a horn. Numbers are mm, as {@code 2.38}. */
public enum KeyField {
    ROD("rod", "rod", "Rod", false),
    TURNS_ON("turns-on", "turns_on", "Turns on (rod, pivots, sleeves)", "rod", "pivots", "sleeves"),
    ROD_DIAMETER("rod-diameter", "diameter_mm", "Rod diameter", true),
    ROD_LENGTH("rod-length", "length_mm", "Rod length", true),
    THREAD("thread", "thread", "Thread", false),
    DRAWS_OUT("draws-out", "draws_out", "Draws out at", false),
    SPRING("spring", "spring", "Spring (needle, flat)", "needle", "flat"),
    SPRING_SIZE("spring-size", "spring_mm", "Spring wire or strip", true),
    SPRING_LENGTH("spring-length", "spring_length_mm", "Spring length", true),
    CUP_INSIDE("cup-inside", "cup_inside_mm", "Cup inside", true),
    RIM_INSIDE("rim-inside", "rim_inside_mm", "Rim inside", true),
    RIM_OUTSIDE("rim-outside", "rim_outside_mm", "Rim outside", true),
    RESONATOR("resonator", "resonator_mm", "Resonator", true);

    /** No rod of a horn is longer. */
    private static final int LONGEST_MM = 1000;

    private final String word;
    private final String column;
    private final String title;
    private final boolean millimetres;
    private final List<String> words;

    KeyField(String word, String column, String title, boolean millimetres) {
        this(word, column, title, millimetres, List.of());
    }

    KeyField(String word, String column, String title, String... words) {
        this(word, column, title, false, List.of(words));
    }

    KeyField(String word, String column, String title, boolean millimetres, List<String> words) {
        this.word = word;
        this.column = column;
        this.title = title;
        this.millimetres = millimetres;
        this.words = words;
    }

    /** @throws BadInput where no key can have that */
    void refuse(String value) {
        if (!words.isEmpty() && !words.contains(value)) {
            throw new BadInput(title + ": “" + value + "” is none of " + String.join(", ", words));
        }
        if (millimetres && value.matches("[-+]?[0-9]+([.,][0-9]+)?")) {
            double mm = Double.parseDouble(value.replace(',', '.'));
            if (mm <= 0 || mm > LONGEST_MM) {
                throw new BadInput(title + ": " + value + " mm is no size on a key: look at the sign and the unit");
            }
        }
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
