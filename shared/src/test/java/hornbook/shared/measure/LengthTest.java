package hornbook.shared.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            2743200   | 2.743 mm (.108 in)
            2740000   | 2.74 mm (.1079 in)
            3000000   | 3 mm (.1181 in)
            25400000  | 25.4 mm (1.000 in)
            31750000  | 31.75 mm (1.250 in)
            -10000    | -0.01 mm (-.0004 in)
            0         | 0 mm (.000 in)
            """)
    void showsBothUnits(long nanometres, String shown) {
        assertThat(new Length(nanometres)).hasToString(shown);
    }

    @Test
    void putsTheInchFirstWhereAsked() {
        assertThat(Length.ofInches("0.108").text(LengthUnit.THOU)).isEqualTo(".108 in (2.743 mm)");
    }

    /** 1 in = 25.4 mm (1959), so thousandths and 64ths are whole nanometres. */
    @Test
    void holdsThousandthsAnd64thsExactly() {
        for (int n = 1; n <= 1000; n++) {
            BigDecimal thousandths = BigDecimal.valueOf(n, 3).multiply(new BigDecimal("25.4"));
            assertThat(Length.of(BigDecimal.valueOf(n), LengthUnit.THOU).millimetres())
                    .isEqualByComparingTo(thousandths);
        }
        for (int n = 1; n <= 64; n++) {
            BigDecimal part =
                    BigDecimal.valueOf(n).divide(BigDecimal.valueOf(64)).multiply(new BigDecimal("25.4"));
            assertThat(Rows.READER
                            .length(n + "/64\"", LengthUnit.MILLIMETRE)
                            .orThrow()
                            .millimetres())
                    .isEqualByComparingTo(part);
        }
    }

    @Test
    void roundsHalvesAwayFromNought() {
        assertThat(Length.ofMillimetres("0.0000005").nanometres()).isEqualTo(1);
        assertThat(Length.ofMillimetres("-0.0000005").nanometres()).isEqualTo(-1);
        assertThat(Length.ofMillimetres("0.0000004").nanometres()).isZero();
    }
}
