package hornbook.viewer.paper;

import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.function.DoubleSupplier;

/**
 * An elliptical arc from where a path stands. Source: SVG 2, appendix B.2.4, conversion from end points to centre, and
 * B.2.5, radii that are too small.
 *
 * @param turn of the ellipse's first axis, degrees
 * @param large the longer way round
 * @param sweep towards growing angles, clockwise as y runs downward
 */
record Arc(double rx, double ry, double turn, boolean large, boolean sweep, double x, double y) {
    private static final double FULL_TURN = 360;

    static Arc read(DoubleSupplier next) {
        return new Arc(
                Math.abs(next.getAsDouble()),
                Math.abs(next.getAsDouble()),
                next.getAsDouble(),
                next.getAsDouble() != 0,
                next.getAsDouble() != 0,
                next.getAsDouble(),
                next.getAsDouble());
    }

    /** Adds it as cubic curves; a flat ellipse is a straight line, an arc to where one stands is nothing. */
    void addTo(Path2D path) {
        Point2D from = path.getCurrentPoint();
        if (from.getX() == x && from.getY() == y) {
            return;
        }
        if (rx == 0 || ry == 0) {
            path.lineTo(x, y);
            return;
        }
        // In the frame where the ellipse is the unit circle the rest is school geometry.
        AffineTransform back = AffineTransform.getRotateInstance(Math.toRadians(turn));
        back.scale(rx, ry);
        AffineTransform toCircle = AffineTransform.getScaleInstance(1 / rx, 1 / ry);
        toCircle.rotate(-Math.toRadians(turn));
        Point2D start = toCircle.transform(from, null);
        Point2D end = toCircle.transform(new Point2D.Double(x, y), null);
        path.append(back.createTransformedShape(onCircle(start, end)), true);
        path.lineTo(x, y);
    }

    private Arc2D onCircle(Point2D start, Point2D end) {
        double dx = end.getX() - start.getX();
        double dy = end.getY() - start.getY();
        double half = Math.hypot(dx, dy) / 2;
        double radius = Math.max(1, half);
        double off = Math.sqrt(radius * radius - half * half) / (2 * half) * (large == sweep ? -1 : 1);
        double centreX = (start.getX() + end.getX()) / 2 - off * dy;
        double centreY = (start.getY() + end.getY()) / 2 + off * dx;
        double first = Math.toDegrees(Math.atan2(start.getY() - centreY, start.getX() - centreX));
        double last = Math.toDegrees(Math.atan2(end.getY() - centreY, end.getX() - centreX));
        // Arc2D counts angles the other way.
        return new Arc2D.Double(
                centreX - radius, centreY - radius, 2 * radius, 2 * radius, -first, -extent(last - first), Arc2D.OPEN);
    }

    private double extent(double between) {
        if (sweep) {
            return between < 0 ? between + FULL_TURN : between;
        }
        return between > 0 ? between - FULL_TURN : between;
    }
}
