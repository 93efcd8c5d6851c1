package hornbook.shared.restock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.shared.exchange.Published;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class IntermittentTest {
    private static final Offset<Double> PRINTED = within(1e-9);

    /** demand.csv: Croston 1972 as R's forecast 8.20 computes it; Syntetos and Boylan 2005 from the same. */
    static List<Map<String, String>> series() {
        return Published.rows("demand.csv");
    }

    @ParameterizedTest
    @MethodSource("series")
    void agreesWithTheReferenceToNineDecimals(Map<String, String> row) {
        int[] series = Arrays.stream(row.get("values").split(" "))
                .mapToInt(Integer::parseInt)
                .toArray();
        Intermittent found = Intermittent.of(series, number(row, "alpha"));
        assertThat(found.size()).isEqualTo(number(row, "size_estimate"), PRINTED);
        assertThat(found.gap()).isEqualTo(number(row, "interval_estimate"), PRINTED);
        assertThat(found.croston()).isEqualTo(number(row, "croston_rate"), PRINTED);
        assertThat(found.sba()).isEqualTo(number(row, "sba_rate"), PRINTED);
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }

    @Test
    void aSeriesWithoutDemandForecastsNone() {
        assertThat(Intermittent.of(new int[12], 0.1).sba()).isZero();
        assertThat(Intermittent.tsb(new int[12], 0.1)).isZero();
    }

    /** Teunter, Syntetos and Babai 2011, from their formula: each empty period takes the share alpha off the chance. */
    @Test
    void whatIsNoLongerUsedFadesByAlphaAPeriod() {
        int[] used = {2, 2, 2, 2};
        int[] thenNotFor12 = Arrays.copyOf(used, used.length + 12);
        assertThat(Intermittent.tsb(used, 0.1)).isEqualTo(2.0, PRINTED);
        assertThat(Intermittent.tsb(thenNotFor12, 0.1)).isEqualTo(2 * Math.pow(0.9, 12), PRINTED);
        assertThat(Intermittent.of(thenNotFor12, 0.1).croston()).isEqualTo(2.0, PRINTED);
    }
}
