package hornbook.viewer.paper;

import hornbook.shared.shop.BadInput;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;

/** Paper as it is bought, upright. Sources: ISO 216 for A4; ANSI Y14.1 size A, 8.5 by 11 inch, for Letter. */
public enum PaperSize {
    A4(210, 297),
    LETTER(215.9, 279.4);

    /** From memory: where Letter, and not A4, lies in the shops. */
    private static final Set<String> LETTER_COUNTRIES = Set.of("US", "CA", "MX", "PH", "CO", "CL");

    private final double width;
    private final double height;

    PaperSize(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** In millimetres. */
    public double width() {
        return width;
    }

    /** In millimetres. */
    public double height() {
        return height;
    }

    /** What is bought where this machine says it is: Letter in North America, the Philippines, Colombia and Chile, else A4. */
    public static PaperSize usual() {
        return LETTER_COUNTRIES.contains(Locale.getDefault().getCountry()) ? LETTER : A4;
    }

    /** The paper of that name, however capitalised. @throws BadInput for another */
    public static PaperSize named(String name) {
        return Arrays.stream(values())
                .filter(size -> size.name().equalsIgnoreCase(name.strip()))
                .findFirst()
                .orElseThrow(() -> new BadInput("paper " + name + " is not known: write a4 or letter"));
    }
}
