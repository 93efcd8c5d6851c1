package hornbook.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a reader of codes types, among what a person types. */
class ScanTest {
    private final Scan scan = new Scan();
    private long now = 1000;

    private boolean type(String text) {
        boolean last = false;
        for (char letter : text.toCharArray()) {
            now += 8;
            last = scan.typed(letter, now);
        }
        return last;
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "half a word", "h", "hornhorn", "hornbookhornbook", "hornboo"})
    void aCodeIsHeardWhateverWasTypedBefore(String before) {
        type(before);
        type("hornbook:d-card-r5c5");
        assertThat(scan.ended(now)).contains("d-card-r5c5");
    }

    @Test
    void theLettersOfTheNamePassAndThoseOfTheCodeDoNot() {
        assertThat(type("hornbook")).isFalse();
        assertThat(type(":")).isTrue();
        assertThat(type("d-card-r5c5")).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"horn book:d-1", "horn:d-1", "d-card-r5c5", "hornbook d-1", "hornbook:"})
    void whatIsNoCodeIsNone(String typed) {
        type(typed);
        assertThat(scan.ended(now)).isEqualTo(Optional.empty());
    }

    @Test
    void aCodeThatNobodyEndsIsForgotten() {
        type("hornbook:d-card");
        now += 11_000;
        assertThat(scan.reading(now)).isFalse();
        assertThat(type("x")).isFalse();
    }

    @Test
    void twoCodesOneAfterTheOtherAreTwo() {
        type("hornbook:d-1");
        assertThat(scan.ended(now)).contains("d-1");
        type("hornbook:d-2");
        assertThat(scan.ended(now)).contains("d-2");
    }
}
