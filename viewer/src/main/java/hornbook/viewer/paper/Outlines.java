package hornbook.viewer.paper;

import java.awt.geom.Path2D;

/** Plain figures as outlines of straight lines. Lengths in millimetres. */
public final class Outlines {
    private Outlines() {}

    public static Path2D box(double x, double y, double width, double height) {
        Path2D.Double box = new Path2D.Double();
        box.moveTo(x, y);
        box.lineTo(x + width, y);
        box.lineTo(x + width, y + height);
        box.lineTo(x, y + height);
        box.closePath();
        return box;
    }
}
