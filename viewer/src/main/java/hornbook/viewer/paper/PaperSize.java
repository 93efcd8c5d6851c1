package hornbook.viewer.paper;

import hornbook.shared.shop.BadInput;
import java.util.Arrays;

/** Paper as it is bought, upright. Sources: ISO 216 for A4; ANSI Y14.1 size A, 8.5 by 11 inch, for Letter. */
public enum PaperSize {
    A4(210, 297),
    LETTER(215.9, 279.4);

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

    /** The paper of that name, however capitalised. @throws BadInput for another */
    public static PaperSize named(String name) {
        return Arrays.stream(values())
                .filter(size -> size.name().equalsIgnoreCase(name.strip()))
                .findFirst()
                .orElseThrow(() -> new BadInput("paper " + name + " is not known: write a4 or letter"));
    }
}
