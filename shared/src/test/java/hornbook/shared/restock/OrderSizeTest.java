package hornbook.shared.restock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.shared.exchange.Published;
import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OrderSizeTest {
    private static final Keeping WITH_COSTS = new Keeping(0.95, 7, 6.0, 0.25);

    private static Forecast monthly(double pieces) {
        return new Forecast(pieces, pieces, Takings.NONE, "");
    }

    private static double published(String kind, String input) {
        return Published.rows("reorder.csv").stream()
                .filter(row -> row.get("kind").equals(kind) && row.get("input").startsWith(input))
                .map(row -> Double.parseDouble(row.get("value")))
                .findFirst()
                .orElseThrow();
    }

    /**
     * F. W. Harris, How Many Parts to Make at Once, Factory 10(2), 1913: 1000 a month, set-up 2 dollars, a piece 0.10
     * dollar, interest and depreciation a tenth; his X = sqrt(240 M S / C), printed 2,190.
     */
    @Test
    void harrissOwnExample() {
        assertThat(OrderSize.least(12 * 1000, 2, 0.1 * 0.10)).isCloseTo(published("eoq", "Harris 1913"), within(1e-6));
    }

    /** The common textbook example: 10 000 a year, 40 an order, 5 a piece and year: 400, which cost 2000. */
    @Test
    void theTextbooksExampleAndItsCost() {
        double size = OrderSize.least(10_000, 40, 5);
        assertThat(size).isCloseTo(published("eoq", "D=10000"), within(1e-9));
        assertThat(40 * 10_000 / size + 5 * size / 2).isCloseTo(published("eoq_cost", "same"), within(1e-9));
    }

    /** No other size costs less: the sum of ordering and holding, tried a piece to either side and far off. */
    @ParameterizedTest
    @CsvSource({"12, 6, 0.5", "3, 2, 0.1", "200, 11, 1.75"})
    void noOtherSizeCostsLess(double perYear, double orderCost, double holding) {
        double best = OrderSize.least(perYear, orderCost, holding);
        double least = cost(best, perYear, orderCost, holding);
        for (double share : new double[] {0.3, 0.9, 1.1, 3}) {
            assertThat(cost(share * best, perYear, orderCost, holding)).isGreaterThan(least);
        }
    }

    private static double cost(double size, double perYear, double orderCost, double holding) {
        return orderCost * perYear / size + holding * size / 2;
    }

    /** By hand: 24 a year, 6 an order, a quarter of 4.00 a piece and year: sqrt(2 x 24 x 6 / 1) = 16.97. */
    @Test
    void costsDecideWhereTheyAreKnown() {
        OrderSize size = OrderSize.of(monthly(2), WITH_COSTS, Optional.of(new BigDecimal("4.00")));
        assertThat(size).isEqualTo(new OrderSize(17, true));
    }

    @Test
    void threeMonthsWhereACostIsNot() {
        assertThat(OrderSize.of(monthly(2), Keeping.USUAL, Optional.of(BigDecimal.TEN)))
                .isEqualTo(new OrderSize(6, false));
        assertThat(OrderSize.of(monthly(2), WITH_COSTS, Optional.empty())).isEqualTo(new OrderSize(6, false));
    }

    /** However cheap the piece, or where keeping it costs nothing. */
    @Test
    void neverMoreThanTwoYearsUse() {
        assertThat(OrderSize.of(monthly(2), WITH_COSTS, Optional.of(new BigDecimal("0.01")))
                        .pieces())
                .isEqualTo(48);
        assertThat(OrderSize.of(monthly(2), new Keeping(0.95, 7, 6.0, 0), Optional.of(BigDecimal.TEN))
                        .pieces())
                .isEqualTo(48);
    }

    /** Packs are kept: by hand, point 3, none free, 17 wanted, packs of 5: up to 20, four packs. */
    @Test
    void wholePacksAreBoughtUpToThatSize() {
        OrderSize size = OrderSize.of(monthly(2), WITH_COSTS, Optional.of(new BigDecimal("4.00")));
        assertThat(Need.of(0, 0, 3, size, 5, true).order()).isEqualTo(20);
        assertThat(Need.of(0, 0, 3, size, 5, true).byCost()).isTrue();
        assertThat(Need.of(0, 0, 3, size, 100, true).order()).isEqualTo(100);
        assertThat(Need.of(0, 0, 3, size, 100, true).byCost()).isFalse();
    }
}
