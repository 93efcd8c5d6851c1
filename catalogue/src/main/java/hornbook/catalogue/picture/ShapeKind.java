package hornbook.catalogue.picture;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The elements a shape may be written as, with the attributes each must have. */
public enum ShapeKind {
    /** Free path. */
    PATH("path", List.of("d"), List.of()),
    /** Straight line. */
    LINE("line", List.of("x1", "y1", "x2", "y2"), List.of()),
    /** Circle. */
    CIRCLE("circle", List.of("cx", "cy", "r"), List.of()),
    /** Ellipse along the axes. */
    ELLIPSE("ellipse", List.of("cx", "cy", "rx", "ry"), List.of()),
    /** Rectangle along the axes, its corners perhaps rounded. */
    RECT("rect", List.of("x", "y", "width", "height"), List.of("rx")),
    /** Open line through points. */
    POLYLINE("polyline", List.of("points"), List.of()),
    /** Closed line through points. */
    POLYGON("polygon", List.of("points"), List.of());

    private final String word;
    private final List<String> required;
    private final List<String> optional;

    ShapeKind(String word, List<String> required, List<String> optional) {
        this.word = word;
        this.required = required;
        this.optional = optional;
    }

    /** The element's name. */
    public String word() {
        return word;
    }

    List<String> required() {
        return required;
    }

    boolean knows(String attribute) {
        return required.contains(attribute) || optional.contains(attribute);
    }

    static Optional<ShapeKind> of(String word) {
        return Arrays.stream(values()).filter(k -> k.word.equals(word)).findFirst();
    }
}
