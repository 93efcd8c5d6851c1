package hornbook.shared.pads;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.exchange.Published;
import java.math.BigDecimal;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class HalfSizeTest {
    /** pads.csv: rounding to the nearest half with ties upward, computed outside the project. */
    static Stream<Map<String, String>> nearestHalf() {
        return Published.rows("pads.csv").stream().filter(r -> "nearest_half".equals(r.get("kind")));
    }

    @ParameterizedTest
    @MethodSource("nearestHalf")
    void theRuledSizeIsTheNearestHalfMillimetre(Map<String, String> row) {
        int ruled = HalfSize.ruled(new BigDecimal(row.get("input_mm")), Tie.UP);
        assertThat(HalfSize.mm(ruled)).isEqualByComparingTo(row.get("value"));
    }

    @ParameterizedTest
    @CsvSource({"18.24, 18.0", "18.25, 18.0", "18.26, 18.5", "18.75, 18.5", "18.76, 19.0"})
    void aTieGoesDownWhereTheShopSaysSo(String mm, String size) {
        assertThat(HalfSize.mm(HalfSize.ruled(new BigDecimal(mm), Tie.DOWN))).isEqualByComparingTo(size);
    }

    /** pads.csv, row count: 6 to 72 mm by half millimetre are 133 sizes. */
    @Test
    void thereAre133Sizes() {
        assertThat(HalfSize.MOST - HalfSize.LEAST + 1).isEqualTo(133);
    }
}
