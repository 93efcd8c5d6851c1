package hornbook.catalogue.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against SVG 2, chapter 10: the equivalent path given there for each basic shape, with numbers put in. */
class GeometryTest {
    @Test
    void circleIsFourArcsFromTheRight() {
        same(
                ShapeKind.CIRCLE,
                Map.of("cx", "10", "cy", "20", "r", "5"),
                "M 15 20 A 5 5 0 0 1 10 25 A 5 5 0 0 1 5 20 A 5 5 0 0 1 10 15 A 5 5 0 0 1 15 20 Z");
    }

    @Test
    void ellipseIsFourArcsFromTheRight() {
        same(
                ShapeKind.ELLIPSE,
                Map.of("cx", "10", "cy", "20", "rx", "5", "ry", "2.5"),
                "M 15 20 A 5 2.5 0 0 1 10 22.5 A 5 2.5 0 0 1 5 20 A 5 2.5 0 0 1 10 17.5 A 5 2.5 0 0 1 15 20 Z");
    }

    @Test
    void rectangleStartsTopLeftAndRunsRight() {
        same(ShapeKind.RECT, Map.of("x", "1", "y", "2", "width", "10", "height", "20"), "M 1 2 H 11 V 22 H 1 Z");
    }

    @Test
    void roundedRectangleHasAnArcAtEachCorner() {
        same(
                ShapeKind.RECT,
                Map.of("x", "1", "y", "2", "width", "10", "height", "20", "rx", "3"),
                "M 4 2 H 8 A 3 3 0 0 1 11 5 V 19 A 3 3 0 0 1 8 22 H 4 A 3 3 0 0 1 1 19 V 5 A 3 3 0 0 1 4 2 Z");
    }

    /** Same chapter: a radius over half the side is taken as half the side. */
    @Test
    void roundingIsNoMoreThanHalfASide() {
        same(
                ShapeKind.RECT,
                Map.of("x", "0", "y", "0", "width", "10", "height", "20", "rx", "8"),
                "M 5 0 H 5 A 5 8 0 0 1 10 8 V 12 A 5 8 0 0 1 5 20 H 5 A 5 8 0 0 1 0 12 V 8 A 5 8 0 0 1 5 0 Z");
    }

    @Test
    void linesRunThroughTheirPoints() {
        same(ShapeKind.LINE, Map.of("x1", "1", "y1", "2", "x2", "3", "y2", "4"), "M 1 2 L 3 4");
        same(ShapeKind.POLYLINE, Map.of("points", "1,2 3,4 5,0"), "M 1 2 L 3 4 L 5 0");
        same(ShapeKind.POLYGON, Map.of("points", "1,2 3,4 5,0"), "M 1 2 L 3 4 L 5 0 Z");
    }

    @ParameterizedTest
    @CsvSource({
        "CIRCLE, r, 0, above 0",
        "CIRCLE, r, -1, above 0",
        "CIRCLE, r, 5mm, not a number",
        "CIRCLE, cx, 1 2, not one number",
        "POLYGON, points, '1 2 3', pairs",
        "POLYGON, points, '1 2 3 4', pairs",
    })
    void namesAnAttributeThatIsNotWhatItShouldBe(ShapeKind kind, String name, String value, String fault) {
        Map<String, String> good = kind == ShapeKind.CIRCLE ? Map.of("cx", "1", "cy", "1", "r", "1") : Map.of();
        Map<String, String> attributes = new HashMap<>(good);
        attributes.put(name, value);
        assertThatThrownBy(() -> Geometry.path(kind, attributes))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(fault);
    }

    private static void same(ShapeKind kind, Map<String, String> attributes, String path) {
        assertThat(Outline.of(Geometry.path(kind, attributes), 0.001)).isEqualTo(Outline.of(path, 0.001));
    }
}
