package hornbook.shared.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sizes as they are said at the bench (from memory), in the form of the books. */
class SizesAsSaidTest {
    private final SizeReader sizes = StandardSizes.load().reader();

    @ParameterizedTest
    @CsvSource({
        "12 mm, size=12 mm",
        "'2,74', size=2.74 mm",
        ".108\", size=.108\"",
        "length 12; diameter 2.74 mm, length=12 mm;diameter=2.74 mm",
        "length: 12 mm, length=12 mm",
        "length=10.4 mm;nose=headed-tapered, length=10.4 mm;nose=headed-tapered",
        "length 9; nose=tapered, length=9 mm;nose=tapered"
    })
    void sizesGetTheirNamesAndTheirUnit(String said, String written) {
        assertThat(sizes.asSaid(said).found()).contains(written);
        assertThat(sizes.dimensions(written).found()).isPresent();
    }

    @ParameterizedTest
    @ValueSource(strings = {"rather long", "length", "-3 mm", "12 mm; 3 mm", "=", "length 3; length 4"})
    void whatIsNoSizeIsRefused(String said) {
        assertThat(sizes.asSaid(said).found()).isEmpty();
        assertThat(sizes.asSaid(said).refusal()).isPresent();
    }

    @Test
    void nothingSaidIsNothingWritten() {
        assertThat(sizes.asSaid(" ").found()).contains("");
    }
}
