package hornbook.shared.measure;

import static hornbook.shared.measure.Rows.READER;
import static hornbook.shared.measure.Rows.SIZES;
import static hornbook.shared.measure.Rows.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.math.BigDecimal;
import java.math.MathContext;
import org.junit.jupiter.api.Test;

/** The thread table against its standards' formulas; each row of the table names the standard. */
class ThreadTableTest {
    private static final double TABLE_ROUNDING = 0.00011;

    /** Designation, diameter, pitch and threads per inch of all 131 rows. */
    @Test
    void everyRowReadsFromItsDesignation() {
        for (NamedCsvRecord row : Rows.of("threads.csv")) {
            Thread thread = READER.thread(row.getField("designation")).orThrow();
            assertThat(thread.designation()).isEqualTo(row.getField("designation"));
            assertThat(thread.major().mm()).isCloseTo(number(row, "major_mm"), within(TABLE_ROUNDING));
            assertThat(thread.pitch().mm()).isCloseTo(number(row, "pitch_mm"), within(0.00001));
            assertThat(thread.pitch().perInch()).isCloseTo(number(row, "tpi"), within(0.0001));
            assertThat(thread.system().angle()).isCloseTo(number(row, "included_angle_deg"), within(0.0001));
        }
        assertThat(SIZES.threads().threads()).hasSize(131);
    }

    /** ISO 68-1 / ASME B1.1: D2 = D - 0.6495191 P, D1 = D - 1.0825318 P, d3 = d - 1.2268693 P. */
    @Test
    void sixtyDegreeThreadsFollowTheBasicProfile() {
        SIZES.threads().threads().stream().filter(t -> t.system().angle() == 60).forEach(t -> {
            double p = t.pitch().mm();
            assertThat(t.pitchDiameter().mm()).isCloseTo(t.major().mm() - 0.6495191 * p, within(TABLE_ROUNDING));
            assertThat(t.minorInternal().mm()).isCloseTo(t.major().mm() - 1.0825318 * p, within(TABLE_ROUNDING));
            assertThat(t.minorExternal().mm()).isCloseTo(t.major().mm() - 1.2268693 * p, within(TABLE_ROUNDING));
        });
    }

    /** BS 84: depth 0.640327 p. Loewenherz: 0.75 p (Machinery's Handbook). */
    @Test
    void whitworthAndLoewenherzThreadsHaveTheirDepth() {
        SIZES.threads().threads().forEach(t -> {
            double depth = switch (t.system()) {
                case WHITWORTH, BRITISH_FINE, MODEL_ENGINEER -> 0.640327;
                case LOEWENHERZ -> 0.75;
                default -> Double.NaN;
            };
            if (!Double.isNaN(depth)) {
                assertThat(t.pitchDiameter().mm())
                        .as(t.designation())
                        .isCloseTo(t.major().mm() - depth * t.pitch().mm(), within(TABLE_ROUNDING));
            }
        });
    }

    /** BS 93: p = 0.9^n, D = 6 x 0.9^(1.2 n), both to two figures; depth 0.6 p, tabulated to 0.005 mm. */
    @Test
    void associationThreadsFollowTheirRule() {
        MathContext two = new MathContext(2);
        for (int n = 0; n <= 16; n++) {
            Thread thread = READER.thread(n + " BA").orThrow();
            BigDecimal p = BigDecimal.valueOf(Math.pow(0.9, n)).round(two);
            BigDecimal d = BigDecimal.valueOf(6 * Math.pow(0.9, 1.2 * n)).round(two);
            assertThat(thread.pitch().amount()).isEqualByComparingTo(p);
            assertThat(thread.major().millimetres()).isEqualByComparingTo(d);
            assertThat(thread.pitchDiameter().mm()).isCloseTo(d.doubleValue() - 0.6 * p.doubleValue(), within(0.0031));
        }
    }

    /** ASME B1.1, GNU units screwgauge(n): D = 0.060 + 0.013 n inch. */
    @Test
    void numberedSizesFollowTheirRule() {
        SIZES.threads().threads().stream()
                .filter(t ->
                        t.system() == ThreadSystem.UNIFIED && !t.designation().contains("/"))
                .forEach(t -> {
                    int n = Integer.parseInt(t.designation().split("-")[0]);
                    assertThat(t.major().in(LengthUnit.INCH)).isCloseTo(0.060 + 0.013 * n, within(1e-9));
                });
    }

    /** The pairs that fool people: their differences as computed outside the project. */
    @Test
    void everyPairDiffersAsPublished() {
        for (NamedCsvRecord row : Rows.of("thread_pairs.csv")) {
            Thread a = READER.thread(row.getField("a")).orThrow();
            Thread b = READER.thread(row.getField("b")).orThrow();
            assertThat(b.major().minus(a.major()).mm()).isCloseTo(number(row, "delta_major_mm"), within(0.0001));
            assertThat(b.pitch().mm() - a.pitch().mm()).isCloseTo(number(row, "delta_pitch_mm"), within(0.00002));
            assertThat(b.system().angle() - a.system().angle()).isCloseTo(number(row, "delta_angle_deg"), within(0.01));
        }
    }

    /** Machinery's Handbook: 100 (D - hole) / (1.299038 P) for 60 degrees, 1.2 p for BA. */
    @Test
    void everyTapDrillLeavesItsPercentageOfThread() {
        for (NamedCsvRecord row : Rows.of("tapdrills.csv")) {
            Thread thread = READER.thread(row.getField("thread")).orThrow();
            LengthUnit unit = row.getField("unit").equals("in") ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
            Length printed = READER.length(row.getField("drill_dia"), unit).orThrow();
            Length named = READER.length(row.getField("drill") + " drill", LengthUnit.MILLIMETRE)
                    .orThrow();
            double percent = number(row, "percent_of_0.75H_double_depth");
            assertThat(thread.percentInHole(named)).as(row.getField("thread")).isCloseTo(percent, within(0.01));
            assertThat(named.minus(printed).abs()).isLessThanOrEqualTo(Length.ofInches("0.00005"));
            assertThat(thread.holeFor(percent).minus(named).abs()).isLessThan(Length.ofMillimetres("0.0002"));
        }
    }

    @Test
    void pitchesCompareExactlyAcrossSystems() {
        assertThat(Pitch.ofMillimetres("1.27")).isEqualByComparingTo(Pitch.perInch(20));
        assertThat(Pitch.ofMillimetres("0.5")).isLessThan(Pitch.perInch(48));
        assertThat(Pitch.perInch(56)).isGreaterThan(Pitch.ofMillimetres("0.45"));
        assertThat(Pitch.perInch(56)).isLessThan(Pitch.perInch(48));
    }
}
