package hornbook.shared.measure;

import static hornbook.shared.measure.Rows.SIZES;
import static hornbook.shared.measure.Rows.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import org.junit.jupiter.api.Test;

/** Limits against ISO 965-1 tables and ASME B1.1; rows as cross-checked in the trade notes. */
class ThreadLimitsTest {

    /** The printed table is carried, not the formula: M3x0.5 is 2.980-2.874, pitch 2.655-2.580, hole 2.459-2.599. */
    @Test
    void metricLimitsAreThePrintedOnes() {
        for (NamedCsvRecord row : Rows.of("thread_limits_iso.csv")) {
            ThreadLimits limits = SIZES.limits().of(thread(row.getField("designation")));
            assertThat(limits.screwMajor().most().mm()).isEqualTo(number(row, "major_max_6g"));
            assertThat(limits.screwMajor().least().mm()).isEqualTo(number(row, "major_min_6g"));
            assertThat(limits.screwPitch().most().mm()).isEqualTo(number(row, "pd_max_6g"));
            assertThat(limits.holeMinor().least().mm()).isEqualTo(number(row, "minor_min_6H"));
            assertThat(limits.holePitch().most().mm()).isEqualTo(number(row, "pd_max_6H"));
        }
        assertThat(SIZES.limits().of(thread("M3x0.5")).screwPitch().least().mm())
                .isEqualTo(2.580);
    }

    /** ISO 965-1 formulas with R40 rounding give the printed row wherever the notes say they agree. */
    @Test
    void metricFormulaMatchesTheTableWhereItShould() {
        int tested = 0;
        for (NamedCsvRecord row : Rows.of("thread_limits_iso.csv")) {
            if (!row.getField("formula_vs_table_after_R40_rounding").isEmpty()) {
                continue;
            }
            ThreadLimits limits = LimitsTable.byFormula(thread(row.getField("designation")));
            close(limits.screwMajor(), number(row, "major_min_6g"), number(row, "major_max_6g"), 0.0011);
            close(limits.screwPitch(), number(row, "pd_min_6g"), number(row, "pd_max_6g"), 0.0011);
            close(limits.holeMinor(), number(row, "minor_min_6H"), number(row, "minor_max_6H"), 0.0011);
            close(limits.holePitch(), number(row, "pd_min_6H"), number(row, "pd_max_6H"), 0.0011);
            tested++;
        }
        assertThat(tested).isEqualTo(4);
    }

    /** ASME B1.1-2003 section 8; 82 printed cells were read and agree within 0.0001 in. */
    @Test
    void unifiedFormulaMatchesEveryRow() {
        for (NamedCsvRecord row : Rows.of("thread_limits_un.csv")) {
            ThreadLimits limits = LimitsTable.byFormula(thread(row.getField("designation")));
            double inch = 25.4;
            close(limits.screwMajor(), inch * number(row, "major_min_2A"), inch * number(row, "major_max_2A"), 0.0003);
            close(limits.screwPitch(), inch * number(row, "pd_min_2A"), inch * number(row, "pd_max_2A"), 0.0005);
            close(limits.holeMinor(), inch * number(row, "minor_min_2B"), inch * number(row, "minor_max_2B"), 0.0005);
            close(limits.holePitch(), inch * number(row, "pd_min_2B"), inch * number(row, "pd_max_2B"), 0.0005);
        }
    }

    /** BS 93: 6 BA bolt major 0.20 p normal, effective 0.10 p + 0.025; nut effective 0.12 p + 0.03, minor 0.375 p. */
    @Test
    void associationLimitsFollowTheStandard() {
        ThreadLimits limits = SIZES.limits().of(thread("6 BA"));
        close(limits.screwMajor(), 2.8 - 0.106, 2.8, 1e-6);
        close(limits.screwPitch(), 2.48 - 0.078, 2.48, 1e-6);
        close(limits.holeMinor(), 2.16, 2.16 + 0.19875, 1e-6);
        close(limits.holePitch(), 2.48, 2.48 + 0.0936, 1e-6);
    }

    @Test
    void everyThreadHasSensibleLimits() {
        SIZES.threads().threads().forEach(thread -> {
            ThreadLimits limits = SIZES.limits().of(thread);
            assertThat(limits.screwMajor().most()).as(thread.designation()).isLessThanOrEqualTo(thread.major());
            assertThat(limits.screwPitch().most())
                    .isLessThanOrEqualTo(limits.holePitch().least());
            assertThat(limits.holeMinor().most())
                    .as(thread.designation())
                    .isLessThan(limits.screwMajor().least());
            assertThat(limits.provenance().source()).isNotBlank();
        });
    }

    private static Thread thread(String designation) {
        return SIZES.threads().designated(designation).orElseThrow();
    }

    private static void close(Limits limits, double least, double most, double by) {
        assertThat(limits.least().mm()).isCloseTo(least, within(by));
        assertThat(limits.most().mm()).isCloseTo(most, within(by));
    }
}
