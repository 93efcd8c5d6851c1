package hornbook.catalogue.picture;

import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Every kind of shape as path data. Source: SVG 2, chapter 10, the equivalent path of each basic shape. */
final class Geometry {
    private Geometry() {}

    /**
     * The path data of a shape.
     *
     * @param attributes those the kind requires, by name
     * @throws IllegalArgumentException saying which attribute is not what it should be
     */
    static String path(ShapeKind kind, Map<String, String> attributes) {
        return switch (kind) {
            case PATH -> {
                String data = attributes.getOrDefault("d", "");
                PathData.read(data);
                yield data.strip();
            }
            case LINE ->
                "M %s %s L %s %s"
                        .formatted(
                                number(attributes, "x1"),
                                number(attributes, "y1"),
                                number(attributes, "x2"),
                                number(attributes, "y2"));
            case CIRCLE -> ellipse(attributes, size(attributes, "r"), size(attributes, "r"));
            case ELLIPSE -> ellipse(attributes, size(attributes, "rx"), size(attributes, "ry"));
            case RECT -> rect(attributes);
            case POLYLINE -> points(attributes, 2);
            case POLYGON -> points(attributes, 3) + " Z";
        };
    }

    private static String ellipse(Map<String, String> attributes, double rx, double ry) {
        double x = value(attributes, "cx");
        double y = value(attributes, "cy");
        return "M " + at(x + rx, y) + arc(rx, ry, x, y + ry) + arc(rx, ry, x - rx, y) + arc(rx, ry, x, y - ry)
                + arc(rx, ry, x + rx, y) + " Z";
    }

    private static String rect(Map<String, String> attributes) {
        double x = value(attributes, "x");
        double y = value(attributes, "y");
        double right = x + size(attributes, "width");
        double bottom = y + size(attributes, "height");
        if (!attributes.containsKey("rx")) {
            return "M " + at(x, y) + " L " + at(right, y) + " L " + at(right, bottom) + " L " + at(x, bottom) + " Z";
        }
        double rx = Math.min(size(attributes, "rx"), (right - x) / 2);
        double ry = Math.min(size(attributes, "rx"), (bottom - y) / 2);
        return "M " + at(x + rx, y) + " L " + at(right - rx, y) + arc(rx, ry, right, y + ry) + " L "
                + at(right, bottom - ry) + arc(rx, ry, right - rx, bottom) + " L " + at(x + rx, bottom)
                + arc(rx, ry, x, bottom - ry) + " L " + at(x, y + ry) + arc(rx, ry, x + rx, y) + " Z";
    }

    private static String points(Map<String, String> attributes, int atLeast) {
        List<Double> numbers = PathData.numbers(attributes.getOrDefault("points", ""));
        if (numbers.size() % 2 != 0 || numbers.size() < 2 * atLeast) {
            throw new IllegalArgumentException("points are " + atLeast + " or more pairs of numbers");
        }
        StringBuilder path = new StringBuilder("M");
        for (int i = 0; i < numbers.size(); i += 2) {
            path.append(i == 0 ? " " : " L ").append(at(numbers.get(i), numbers.get(i + 1)));
        }
        return path.toString();
    }

    private static String arc(double rx, double ry, double x, double y) {
        return " A " + at(rx, ry) + " 0 0 1 " + at(x, y);
    }

    private static String at(double x, double y) {
        return plain(x) + " " + plain(y);
    }

    private static double size(Map<String, String> attributes, String name) {
        double size = value(attributes, name);
        if (size <= 0) {
            throw new IllegalArgumentException(name + " is not above 0");
        }
        return size;
    }

    private static String number(Map<String, String> attributes, String name) {
        return plain(value(attributes, name));
    }

    private static double value(Map<String, String> attributes, String name) {
        List<Double> numbers = PathData.numbers(attributes.getOrDefault(name, ""));
        if (numbers.size() != 1) {
            throw new IllegalArgumentException(name + " is not one number");
        }
        return numbers.getFirst();
    }

    /** Thousandths of a unit, no needless zeros. */
    static String plain(double value) {
        String text =
                String.format(Locale.ROOT, "%.3f", value).replaceAll("0+$", "").replaceAll("\\.$", "");
        return text.equals("-0") ? "0" : text;
    }
}
