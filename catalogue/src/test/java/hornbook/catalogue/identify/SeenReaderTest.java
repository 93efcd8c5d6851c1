package hornbook.catalogue.identify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hornbook.catalogue.entry.Catalogue;
import hornbook.shared.shop.BadInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The ways of writing a look, as the project's definitions have them. */
class SeenReaderTest {
    private static final SeenReader READER = new SeenReader(Catalogue.shipped());

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "tone-hole-rim=rolled; tone-hole-rim=rolled",
                "tone-hole-rim = rolled | straight; tone-hole-rim=rolled|straight",
                "bell-key-side=no:left; bell-key-side=right|split|front",
                "pad-type=white-kid|no:cork; pad-type=white-kid|no:cork",
                "adjusting-screws=none; adjusting-screws=none",
                "prior-repair=none-seen; prior-repair=no:resoldered-posts|no:chewed-slots|no:filed-rims"
                        + "|no:replaced-keys|no:dent-work|no:glue-repairs",
                "tone-hole-rim=unknown; tone-hole-rim=unknown",
                "fork-eb=absent; fork-eb=absent"
            })
    void looks(String written, String read) {
        assertThat(READER.read(written).written()).isEqualTo(read);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "rod-diameter=2.84; 2.84; 0",
                "rod-diameter=2,84 mm; 2.84; 0",
                "rod-diameter=.112 in; 2.8448; 0",
                "rod-diameter=2.84±0.02 mm; 2.84; 0.02",
            })
    void measurements(String written, double mm, double spread) {
        Seen.Measured seen = (Seen.Measured) READER.read(written);
        assertThat(seen.mm()).isCloseTo(mm, within(1e-9));
        assertThat(seen.spread()).isCloseTo(spread, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "tone-hole-rimm=rolled; perhaps tone-hole-rim is meant",
                "zzzz=rolled; is not known",
                "tone-hole-rim=roled; perhaps rolled is meant",
                "tone-hole-rim=zzzzzz; write one of straight, rolled",
                "tone-hole-rim=; a value is missing",
                "rolled; write trait=value",
                "rod-diameter=thick; rod-diameter:",
                "rod-diameter=-2 mm; rod-diameter:",
            })
    void whatIsNotKnownIsSaidInOneLine(String written, String said) {
        assertThatThrownBy(() -> READER.read(written))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining(said)
                .message()
                .doesNotContain("\n");
    }

    @Test
    void serialsAreReadWithDoubt() {
        SerialReading read = SerialReading.of("n 3660?8");
        assertThat(read.letters()).isEqualTo("N");
        assertThat(read.within(366008, 366098)).isCloseTo(1, within(1e-12));
        assertThat(read.within(366080, 366089)).as("an 8 is often misread").isGreaterThan(0.1);
        assertThat(read.within(366020, 366029)).as("a 2 seldom").isLessThan(0.1);
        assertThat(SerialReading.of("19433T").within(19433, 19433)).isEqualTo(1);
        assertThatThrownBy(() -> SerialReading.of("abc")).isInstanceOf(BadInput.class);
    }
}
