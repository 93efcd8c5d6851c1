package hornbook.viewer.paper;

import hornbook.catalogue.picture.Pen;
import hornbook.catalogue.picture.Picture;
import hornbook.catalogue.picture.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Draws a picture on a page in greys alone, so that it reads on any printer: the part that matters is black and broad,
 * the rest is grey.
 */
public final class Drawing {
    private static final double BLACK = 0;
    private static final double PAPER = 1;
    private static final double REST = 0.42;
    private static final double FAINT = 0.55;
    private static final List<Double> DASHES = List.of(4.0, 3.0);

    private Drawing() {}

    /** As large as the box allows, in its middle. */
    public static void draw(Sheet sheet, Picture picture, Rectangle2D box) {
        double scale = Math.min(box.getWidth() / picture.width(), box.getHeight() / picture.height());
        AffineTransform place = AffineTransform.getTranslateInstance(
                box.getCenterX() - scale * picture.width() / 2, box.getCenterY() - scale * picture.height() / 2);
        place.scale(scale, scale);
        for (Shape shape : picture.shapes()) {
            sheet.draw(place.createTransformedShape(Curves.of(shape)), ink(shape.pen(), scale));
        }
    }

    /** Widths in picture units as the pens give them; those of the part that matters a little more. */
    private static Ink ink(Pen pen, double scale) {
        return switch (pen) {
            case LINE -> ink(scale, 2.5, REST, null);
            case THIN -> ink(scale, 1.3, REST, null);
            case HATCH -> ink(scale, 0.8, FAINT, null);
            case BODY -> ink(scale, 2.5, REST, 0.9);
            case PAPER -> ink(scale, 2.5, REST, PAPER);
            case INK -> Ink.area(REST);
            case DARK -> ink(scale, 2.5, 0.2, 0.2);
            case PART -> ink(scale, 3.6, BLACK, null);
            case PART_FILL -> ink(scale, 3, BLACK, 0.72);
            case GHOST ->
                new Ink(
                        1.3 * scale,
                        FAINT,
                        null,
                        DASHES.stream().map(length -> length * scale).toList());
        };
    }

    private static Ink ink(double scale, double width, double line, @Nullable Double fill) {
        return new Ink(width * scale, line, fill, List.of());
    }
}
