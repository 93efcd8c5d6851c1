package hornbook.shared.restock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Order at the point, up to the point and the larger of a pack and three months; by hand. */
class NeedTest {
    @ParameterizedTest(name = "free {0}, on order {1}, point {2}, {3} a month, packs of {4}: order {6}")
    @CsvSource({
        "4, 0, 3, 1.0, 1, true, 0",
        "3, 0, 3, 1.0, 1, true, 3",
        "0, 0, 3, 1.0, 1, true, 6",
        "0, 0, 1, 0.3, 10, true, 10",
        "-1, 0, 1, 0.3, 10, true, 10",
        "-9, 0, 1, 0.3, 10, true, 20",
        "1, 0, 1, 10.0, 10, true, 30",
        "0, 2, 1, 0.3, 10, true, 0",
        "3, 12, 4, 0.3, 12, true, 0",
        "0, 0, 0, 0.0, 10, false, 0",
        "-2, 0, 0, 0.0, 1, false, 2",
        "-2, 0, 0, 0.0, 10, false, 10",
    })
    void ordersWholePacks(int free, int onOrder, int point, double perMonth, int pack, boolean used, int order) {
        Forecast forecast = new Forecast(perMonth, perMonth, Takings.NONE, "");
        assertThat(Need.of(free, onOrder, point, OrderSize.of(forecast, Keeping.USUAL, Optional.empty()), pack, used)
                        .order())
                .isEqualTo(order);
    }
}
