package hornbook.viewer.paper;

import hornbook.catalogue.picture.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;

/** A drawn shape as lines and cubic curves, the only ones PDF knows (ISO 32000-1, 8.5.2). */
final class Curves {
    private static final double TWO_THIRDS = 2.0 / 3;

    private final String[] words;
    private final Path2D.Double path = new Path2D.Double(Path2D.WIND_NON_ZERO);
    private int next;

    private Curves(String absolute) {
        words = absolute.split(" ");
    }

    /** In the units of the picture. */
    static Path2D of(Shape shape) {
        return of(shape.absolute());
    }

    /** From path data as {@link Shape#absolute} writes it. */
    static Path2D of(String absolute) {
        Curves curves = new Curves(absolute);
        while (curves.next < curves.words.length) {
            curves.add(curves.words[curves.next++].charAt(0));
        }
        return curves.path;
    }

    private void add(char letter) {
        switch (letter) {
            case 'M' -> path.moveTo(number(), number());
            case 'L' -> path.lineTo(number(), number());
            case 'C' -> path.curveTo(number(), number(), number(), number(), number(), number());
            case 'Q' -> raise(number(), number(), number(), number());
            case 'A' -> Arc.read(this::number).addTo(path);
            case 'Z' -> path.closePath();
            default -> throw new IllegalArgumentException("path command " + letter + " is not absolute");
        }
    }

    /** The same curve with one degree more: each handle lies two thirds of the way to the old one. */
    private void raise(double x, double y, double toX, double toY) {
        Point2D from = path.getCurrentPoint();
        path.curveTo(
                from.getX() + TWO_THIRDS * (x - from.getX()),
                from.getY() + TWO_THIRDS * (y - from.getY()),
                toX + TWO_THIRDS * (x - toX),
                toY + TWO_THIRDS * (y - toY),
                toX,
                toY);
    }

    private double number() {
        return Double.parseDouble(words[next++]);
    }
}
