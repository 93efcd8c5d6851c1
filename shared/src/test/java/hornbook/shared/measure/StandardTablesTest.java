package hornbook.shared.measure;

import static hornbook.shared.measure.Rows.READER;
import static hornbook.shared.measure.Rows.SIZES;
import static hornbook.shared.measure.Rows.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Drills, gauges, pads and clearance holes against the published tables named in each row. */
class StandardTablesTest {

    /** ASME B94.11M; all 106 rows agree with GNU units 2.22 drillgauge(), drillA..drillZ and a second public table. */
    @Test
    void everyDrillReadsToItsDiameter() {
        for (NamedCsvRecord row : Rows.of("drills.csv")) {
            Length read = READER.length(row.getField("size") + " drill", LengthUnit.MILLIMETRE)
                    .orThrow();
            assertThat(read).as(row.getField("size")).isEqualTo(Length.ofInches(row.getField("inch")));
            assertThat(read.mm()).isCloseTo(number(row, "mm"), within(0.00006));
        }
        assertThat(SIZES.drills().standard()).hasSize(106);
    }

    /** Each gauge by its own standard; rows marked from memory (some of Stubs steel, music wire 38) are left out. */
    @Test
    void everyGaugeNumberReadsToItsSize() {
        int tested = 0;
        for (NamedCsvRecord row : Rows.of("gauges.csv")) {
            if (row.getField("sureness").startsWith("from memory")) {
                continue;
            }
            String text = row.getField("gauge") + " " + row.getField("number");
            Length read = READER.length(text, LengthUnit.MILLIMETRE).orThrow();
            assertThat(read).as(text).isEqualTo(Length.ofInches(row.getField("inch")));
            assertThat(read.mm()).as(text).isCloseTo(number(row, "mm"), within(0.00006));
            assertThat(READER.length(row.getField("number") + " " + row.getField("gauge"), LengthUnit.INCH)
                            .orThrow())
                    .isEqualTo(read);
            tested++;
        }
        assertThat(tested).isEqualTo(394 - 31);
    }

    /** ASTM B258: d = 0.005 x 92^((36-n)/39) in. */
    @Test
    void awgFollowsItsFormula() {
        for (int n = 0; n <= 44; n++) {
            double formula = 0.005 * Math.pow(92, (36 - n) / 39.0);
            assertThat(READER.length("AWG " + n, LengthUnit.MILLIMETRE)
                            .orThrow()
                            .in(LengthUnit.INCH))
                    .isCloseTo(formula, within(0.000001));
        }
    }

    @Test
    void everyDrillAndGaugeReadsBackFromItsOwnText() {
        SIZES.drills()
                .drills()
                .forEach(drill -> assertThat(
                                READER.length(drill.text(), LengthUnit.INCH).orThrow())
                        .as(drill.text())
                        .isEqualTo(drill.diameter()));
        SIZES.gauges()
                .rows()
                .forEach(gauge -> assertThat(
                                READER.length(gauge.text(), LengthUnit.INCH).orThrow())
                        .as(gauge.text())
                        .isEqualTo(gauge.size()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            NUMBER   | 2.74 mm | #36
            FRACTION | 2.74 mm | 7/64
            METRIC   | 2.74 mm | 2.75 mm
            LETTER   | 6.5 mm  | F
            NUMBER   | 1.98 mm | #47
            """)
    void findsTheNearestDrillOfASeries(Drill.Kind kind, String size, String drill) {
        Length length = READER.length(size, LengthUnit.MILLIMETRE).orThrow();
        assertThat(SIZES.drills().nearest(kind, length).size()).isEqualTo(drill);
    }

    /** The rule with its tie upward, as in the project's own trade notes; 133 sizes from 6.0 to 72.0. */
    @Test
    void padsFollowTheHalfMillimetreRule() {
        for (NamedCsvRecord row : Rows.of("pads.csv")) {
            if (row.getField("kind").equals("nearest_half")) {
                Length cup = Length.ofMillimetres(row.getField("input_mm"));
                PadSize size = PadSize.forCup(cup, PadSize.Tie.UP).orThrow();
                assertThat(size).hasToString(row.getField("value") + " mm");
            } else {
                assertThat(new PadSize(144).halves() - new PadSize(12).halves() + 1)
                        .isEqualTo(Integer.parseInt(row.getField("value")));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "18.24,18.0,18.0",
        "18.25,18.5,18.0",
        "18.75,19.0,18.5",
        "18.76,19.0,19.0",
        "5.75,6.0,",
        "72.2,72.0,72.0"
    })
    void aTieGoesUpUnlessTheShopSaysDown(String cup, String up, String down) {
        Length inside = Length.ofMillimetres(cup);
        assertThat(PadSize.forCup(inside, PadSize.Tie.UP).orThrow()).hasToString(up + " mm");
        assertThat(PadSize.forCup(inside, PadSize.Tie.DOWN)
                        .found()
                        .map(PadSize::toString)
                        .orElse(null))
                .isEqualTo(down == null ? null : down + " mm");
    }

    @Test
    void refusesPadsOutsideTheRun() {
        assertThat(PadSize.forCup(Length.ofMillimetres("72.25"), PadSize.Tie.UP)
                        .refusal()
                        .orElseThrow())
                .contains("72.25 mm", "6.0 to 72.0");
        assertThat(PadSize.forCup(Length.ofMillimetres("5.74"), PadSize.Tie.UP).refusal())
                .isPresent();
    }

    /** ASME B18.2.8 drills, equal to FreeCAD's UTSHoleDiameters after rounding to 0.1 mm; ISO 273 in mm. */
    @Test
    void clearanceDrillsHaveTheHolesOfTheirRow() {
        for (NamedCsvRecord row : Rows.of("clearance.csv")) {
            if (row.getField("unit").equals("in")) {
                clearanceDrill(row, "drill_close", "close_or_fine");
                clearanceDrill(row, "drill_normal", "normal_or_medium");
                clearanceDrill(row, "drill_loose", "loose_or_coarse");
            } else {
                double nominal =
                        READER.thread(row.getField("screw")).orThrow().major().mm();
                assertThat(number(row, "close_or_fine"))
                        .as(row.getField("screw"))
                        .isGreaterThan(nominal);
            }
        }
    }

    private static void clearanceDrill(NamedCsvRecord row, String drill, String hole) {
        String text = String.format(Locale.ROOT, "%s drill", row.getField(drill));
        assertThat(READER.length(text, LengthUnit.MILLIMETRE).orThrow().in(LengthUnit.INCH))
                .as(row.getField("screw") + " " + text)
                .isCloseTo(number(row, hole), within(0.00006));
    }
}
