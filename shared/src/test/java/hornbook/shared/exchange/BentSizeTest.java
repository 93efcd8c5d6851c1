package hornbook.shared.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What spreadsheet programs make of sizes. The row of 01/16/26 is what LibreOffice Calc 7.4 gave back for 1/16 (English,
 * numbers detected); day numbers count from 1899-12-30 (ISO/IEC 29500-1, 18.17.4.1); the rest from memory.
 */
class BentSizeTest {
    @ParameterizedTest(name = "{0} was {1}")
    @CsvSource({
        "Mar-48, 3-48",
        "mrz-48, 3-48",
        "Mrz. 48, 3-48",
        "1948-03-01, 3-48",
        "01/03/1948, 3-48",
        "3/1/1948, 3-48",
        "01.03.1948, 3-48",
        "17593, 3-48",
        "Feb-56, 2-56",
        "Oct-32, 10-32",
        "24-Oct, 10-24",
        "2026-10-24, 10-24",
        "Apr-40, 4-40",
    })
    void aThreadIsOfferedAgain(String bent, String was) {
        assertThat(BentSize.thread(bent))
                .get()
                .asString()
                .contains("most likely")
                .contains(was);
    }

    @ParameterizedTest(name = "{0} was {1}")
    @CsvSource({
        "01/16/26, 1/16",
        "16-Jan, 1/16",
        "16.01.2026, 1/16",
        "2026-01-16, 1/16",
        "46038, 1/16",
        "01/08/26, 1/8",
        "Jul-64, 7/64",
        "1964-07-01, 7/64",
        "Sep-32, 9/32",
        "5-16-26, none",
    })
    void aFractionIsOfferedAgain(String bent, String was) {
        if (was.equals("none")) {
            assertThat(BentSize.size(bent)).isEmpty();
        } else {
            assertThat(BentSize.size(bent)).get().asString().contains(was + ";");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "3-48",
                "M2.5x0.45",
                "6 BA",
                "S3",
                "4-36 old-ASME",
                "1/8-40 BSW",
                "1/16",
                "2.74 mm",
                "12",
                "#40",
                "length=12 mm;diameter=2.5 mm",
                ".108 in",
                "1,5",
                "24",
                "1250"
            })
    void whatIsASizeIsLeftAlone(String size) {
        assertThat(BentSize.thread(size)).isEmpty();
        assertThat(BentSize.size(size)).isEmpty();
    }
}
