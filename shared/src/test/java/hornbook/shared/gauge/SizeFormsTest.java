package hornbook.shared.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.shared.gauge.GaugeAnswer.Near;
import hornbook.shared.gauge.GaugeAnswer.Neighbours;
import hornbook.shared.measure.Drill;
import hornbook.shared.measure.Length;
import hornbook.shared.measure.StandardSizes;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Drills ASME B94.11M, AWG ASTM B258, SWG BS 3737, music wire as used with ASTM A228; 1 in = 25.4 mm. */
class SizeFormsTest {
    private static final StandardSizes SIZES = StandardSizes.load();
    private static final SizeForms FORMS = new SizeForms(SIZES);

    private static GaugeAnswer gauge(String text) {
        return FORMS.answer(GaugeQuestion.of(text)).orThrow();
    }

    private static Neighbours scale(GaugeAnswer answer, String series) {
        return answer.scales().stream()
                .filter(scale -> scale.series().equals(series))
                .findFirst()
                .orElseThrow();
    }

    private static String name(Optional<Near> near) {
        return near.map(Near::name).orElse("-");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            2.74 mm   | number drills    | #36 drill      | -              | #35 drill
            2.74 mm   | 64ths of an inch | 3/32"          | -              | 7/64"
            7/64"     | 64ths of an inch | 3/32"          | 7/64"          | 1/8"
            1-1/64"   | 64ths of an inch | 1"             | 1-1/64"        | 1-1/32"
            2.74      | metric drills    | 2.7 mm drill   | -              | 2.75 mm drill
            2.74      | metric rod and tube | 2.7 mm      | -              | 2.8 mm
            3.2       | metric rod and tube | 3 mm        | -              | 3.5 mm
            #40       | number drills    | #41 drill      | #40 drill      | #39 drill
            F drill   | letter drills    | E drill        | F drill        | G drill
            1.0 mm    | AWG              | AWG 19         | -              | AWG 18
            1.0 mm    | SWG              | SWG 20         | -              | SWG 19
            1.0 mm    | music wire       | music wire 17  | -              | music wire 18
            .041 in   | music wire       | music wire 17  | music wire 18  | music wire 19
            18 AWG    | AWG              | AWG 19         | AWG 18         | AWG 17
            0.2 mm    | number drills    | -              | -              | #80 drill
            20 mm     | number drills    | #1 drill       | -              | -
            """)
    void namesTheSizeOnEitherSide(String text, String series, String below, String at, String above) {
        Neighbours found = scale(gauge(text), series);
        assertThat(name(found.below())).isEqualTo(below);
        assertThat(name(found.at())).isEqualTo(at);
        assertThat(name(found.above())).isEqualTo(above);
    }

    @Test
    void givesTheErrorWithItsSign() {
        Neighbours drills = scale(gauge("2.74 mm"), "number drills");
        assertThat(drills.below().orElseThrow().error()).isEqualTo(Length.ofMillimetres("-0.0349"));
        assertThat(drills.above().orElseThrow().error()).isEqualTo(Length.ofMillimetres("0.054"));
    }

    @Test
    void givesBothUnits() {
        GaugeAnswer answer = gauge(".108\"");
        assertThat(answer.millimetres()).isEqualByComparingTo("2.7432");
        assertThat(answer.inches()).isEqualByComparingTo("0.108");
        assertThat(answer.thou()).isEqualByComparingTo("108");
    }

    /** Every drill of the table is found at its own size, and its neighbours lie on their own sides. */
    @Test
    void everyDrillIsItsOwnName() {
        for (Drill drill : SIZES.drills().drills()) {
            if (drill.kind() == Drill.Kind.FRACTION) {
                continue;
            }
            String series = drill.kind().name().toLowerCase(java.util.Locale.ROOT) + " drills";
            Neighbours found = scale(gauge(drill.text()), series);
            assertThat(name(found.at())).isEqualTo(drill.text());
            found.below()
                    .ifPresent(near -> assertThat(near.error().nanometres()).isNegative());
            found.above()
                    .ifPresent(near -> assertThat(near.error().nanometres()).isPositive());
        }
    }

    @Test
    void everyGaugeNumberIsItsOwnName() {
        SIZES.gauges().rows().forEach(row -> {
            Near at = scale(gauge(row.text()), row.system().shown()).at().orElseThrow();
            assertThat(at.size()).as(row.text()).isEqualTo(row.size());
        });
    }

    /** Charts disagree on music wire 38 (.124 or .125): the row says so. */
    @Test
    void saysWhereATableIsWeak() {
        assertThat(scale(gauge("music wire 38"), "music wire")
                        .at()
                        .orElseThrow()
                        .remark()
                        .orElseThrow())
                .contains("memory");
        assertThat(scale(gauge("music wire 18"), "music wire")
                        .at()
                        .orElseThrow()
                        .remark())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"18.25 mm,18.5 mm,0.25", "18.24 mm,18.0 mm,-0.24", "38.25,38.5 mm,0.25"})
    void givesThePad(String cup, String pad, double error) {
        assertThat(gauge(cup).pad().orElseThrow().size()).isEqualTo(pad);
        assertThat(gauge(cup).pad().orElseThrow().error().mm()).isCloseTo(error, within(1e-9));
        assertThat(gauge("2.74 mm").pad()).isEmpty();
    }

    @Test
    void listsWhatLiesInARange() {
        assertThat(gauge("2.72..2.75 mm").within()).extracting(Near::name).contains("2.75 mm drill");
        assertThat(gauge("2.49±0.01 mm").within()).extracting(Near::name).contains("#40 drill");
    }

    @Test
    void takesAThreadAsItsMajorDiameter() {
        GaugeAnswer answer = gauge("3-48");
        assertThat(answer.size()).isEqualTo(Length.ofInches("0.099"));
        assertThat(answer.thread().orElseThrow().designation()).isEqualTo("3-48 UNC");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            18 gauge  | AWG 18 is 1.024 mm
            #81       | #1 to #80
            banana    | no size
            0 mm      | outside
            5000 mm   | outside
            """)
    void refusesInOneLine(String text, String why) {
        assertThat(FORMS.answer(GaugeQuestion.of(text)).refusal().orElseThrow())
                .contains(why)
                .doesNotContain("\n");
    }
}
