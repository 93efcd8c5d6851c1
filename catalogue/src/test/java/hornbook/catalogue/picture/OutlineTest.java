package hornbook.catalogue.picture;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against SVG 2, chapter 9: pairs of path data that it defines to mean the same line. */
class OutlineTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // 9.3.1: relative commands count from the current point
                "M10 10 l5 0 l0 5 z | M10 10 L15 10 L15 15 Z",
                "M10 10 h5 v5 h-5 z | M10 10 L15 10 L15 15 L10 15 Z",
                // 9.3.3: after a closepath the current point is where the subpath began
                "M10 10 L20 10 L20 20 z l5 5 | M10 10 L20 10 L20 20 Z L15 15",
                // 9.3.6: S takes the reflection of the handle before it, or the current point
                "M0 0 C1 2 3 4 5 5 S9 9 10 5 | M0 0 C1 2 3 4 5 5 C7 6 9 9 10 5",
                "M0 0 L5 5 S9 9 10 5 | M0 0 L5 5 C5 5 9 9 10 5",
                "M1 1 c1 2 3 4 5 5 s4 4 5 0 | M1 1 C2 3 4 5 6 6 C8 7 10 10 11 6",
                "M1 1 q1 2 3 4 | M1 1 Q2 3 4 5",
                // 9.3.8: only the end of a relative arc moves
                "M10 10 a5 6 7 0 1 10 0 | M10 10 A5 6 7 0 1 20 10",
            })
    void writesTheSameLineTheSameWay(String one, String other) {
        assertThat(Outline.of(one, 0.001)).isEqualTo(Outline.of(other, 0.001));
    }
}
