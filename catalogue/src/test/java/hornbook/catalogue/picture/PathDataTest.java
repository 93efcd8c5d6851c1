package hornbook.catalogue.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the grammar of path data: SVG 2, chapter 9, less the commands the subset leaves out. */
class PathDataTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "M1 2L3 4 | 2",
                "M 1,2 L 3,4 5,6 | 3",
                "m1-2 .5.5 z | 3",
                "M0 0 H10 V10 Z | 4",
                "M0 0 C1 1 2 2 3 3 S4 4 5 5 Q6 6 7 7 | 4",
                "M0 0 A5 5 0 0 1 10 0 | 2",
            })
    void readsWhatTheSubsetAllows(String data, int steps) {
        assertThat(PathData.read(data)).hasSize(steps);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | does not start with a move",
                "L1 2 | does not start with a move",
                "M0 0 T5 5 | T is not of the subset",
                "M0 0 L1e3 5 | takes 2 numbers, not 1",
                "M0 0 L5 | takes 2 numbers, not 1",
                "M0 0 L | takes 2 numbers, not 0",
                "M0 0 Z 3 | takes 0 numbers, not 1",
                "M0 0 L1 2; 3 4 | ';' is not a number",
                "M0 0 A5 5 0 2 1 10 0 | flags of an arc",
            })
    void namesWhatItDoesNot(String data, String fault) {
        assertThatThrownBy(() -> PathData.read(data))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(fault);
    }

    /** SVG 2, 9.3.2: further pairs after a moveto are linetos, relative ones after a small m. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"M0 0 1 1 2 2 | MLL", "m0 0 1 1 2 2 | mll"})
    void repeatsALetterLeftOut(String data, String letters) {
        assertThat(PathData.read(data).stream()
                        .map(s -> String.valueOf(s.letter()))
                        .reduce("", String::concat))
                .isEqualTo(letters);
    }
}
