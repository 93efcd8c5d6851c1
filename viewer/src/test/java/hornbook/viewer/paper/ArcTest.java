package hornbook.viewer.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArcTest {
    private static final double FINE = 0.0005;

    /**
     * SVG 2, 9.5.1, figure arcs02: the four arcs of flags 00 01 10 11 from 125,75 to 225,125 on ellipses of radii 100 and
     * 50. Their middles can only be 125,125 and 225,75; the boxes follow.
     */
    @ParameterizedTest(name = "large {0}, sweep {1}")
    @CsvSource({
        "0, 0, 225,  75, 125,  75, 225, 125",
        "0, 1, 125, 125, 125,  75, 225, 125",
        "1, 0, 125, 125,  25,  75, 225, 175",
        "1, 1, 225,  75, 125,  25, 325, 125",
    })
    void theFourArcsBetweenTwoPoints(
            int large, int sweep, double cx, double cy, double left, double top, double right, double bottom) {
        Path2D path = Curves.of("M 125 75 A 100 50 0 " + large + " " + sweep + " 225 125");
        assertOnEllipse(path, cx, cy, 100, 50);
        Rectangle2D box = new Path2D.Double(path, null).getBounds2D();
        assertThat(new double[] {box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY()})
                .containsExactly(new double[] {left, top, right, bottom}, within(0.05));
    }

    /** SVG 2, 9.5.1, figure arcs01: three quarters of a circle of 150 round 300,200. */
    @Test
    void threeQuartersOfACircle() {
        Path2D path = Curves.of("M 150 200 A 150 150 0 1 0 300 50");
        assertOnEllipse(path, 300, 200, 150, 150);
        assertThat(path.getBounds2D().getMaxX()).isCloseTo(450, within(0.5));
        assertThat(path.getBounds2D().getMaxY()).isCloseTo(350, within(0.5));
    }

    /** A turn by 90 degrees changes the axes' parts; SVG 2, B.2.5: radii too small grow until they just reach. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "M 50 0 A 100 50 90 1 1 50.001 0,  50.0005, -100, 50, 100",
        "M 0 0 A 1 1 0 0 1 10 0,                 5,   0,  5,   5",
        "M 0 0 A 2 1 0 0 1 40 0,                20,   0, 20,  10",
    })
    void turnedAndTooSmall(String data, double cx, double cy, double rx, double ry) {
        assertOnEllipse(Curves.of(data), cx, cy, rx, ry);
    }

    /** SVG 2, 9.5.1 and B.2.5: a radius of nothing makes a line, no way to go makes nothing. */
    @Test
    void noArcs() {
        assertThat(Curves.of("M 0 0 A 0 5 0 0 1 10 10").getBounds2D()).isEqualTo(new Rectangle2D.Double(0, 0, 10, 10));
        assertThat(Curves.of("M 3 4 A 5 5 0 1 1 3 4").getBounds2D().getWidth()).isZero();
    }

    /** The point at one half of a quadratic curve is (start + 2 handle + end) / 4, by its definition. */
    @Test
    void aQuadraticCurveKeepsItsCourse() {
        Path2D path = Curves.of("M 0 0 Q 10 20 20 0");
        assertThat(path.getBounds2D().getMaxX()).isCloseTo(20, within(FINE));
        assertThat(path.intersects(9.9, 9.9, 0.2, 0.099)).isTrue();
        assertThat(path.intersects(9.9, 10.001, 0.2, 0.2)).isFalse();
    }

    private static void assertOnEllipse(Path2D path, double cx, double cy, double rx, double ry) {
        double[] at = new double[6];
        int points = 0;
        for (PathIterator i = new FlatteningPathIterator(path.getPathIterator(null), 0.001); !i.isDone(); i.next()) {
            i.currentSegment(at);
            assertThat(Math.hypot((at[0] - cx) / rx, (at[1] - cy) / ry)).isCloseTo(1, within(FINE));
            points++;
        }
        assertThat(points).isGreaterThan(8);
    }
}
