package hornbook.catalogue.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import hornbook.catalogue.entry.Catalogue;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The quantiles that are drawn, against those of the log-normal. */
class DrawsTest {
    private static final History NONE =
            new History(List.of(), new Book(Catalogue.shipped().tasks()));

    /** One task of a shop without clocks, whose whole spread is that sigma. */
    private static Draws draws(double median, double sigma) {
        double before = Arrays.stream(NONE.effects().variances()).sum();
        double own = Math.sqrt((sigma * sigma - before) / NONE.effects().rest());
        int[] places = {-1, -1, -1, -1, -1};
        return new Draws(List.of(new Draws.Drawn(median, own, places)), NONE, Draws.MANY);
    }

    /** R's qlnorm; Hipparchus agrees. Twenty thousand draws: within 3 in 100 even at the ends. */
    @ParameterizedTest
    @CsvSource({
        "60, 0.5, 0.1, 31.613011098",
        "60, 0.5, 0.25, 42.824042568",
        "60, 0.5, 0.5, 60.000000000",
        "60, 0.5, 0.8, 91.391747003",
        "60, 0.5, 0.9, 113.877162440",
        "60, 0.5, 0.95, 136.560996511",
        "2.5, 0.8, 0.1, 0.896774788",
        "2.5, 0.8, 0.25, 1.457465447",
        "2.5, 0.8, 0.5, 2.500000000",
        "2.5, 0.8, 0.8, 4.901727621",
        "2.5, 0.8, 0.9, 6.969419838",
        "2.5, 0.8, 0.95, 9.320102565",
        "1, 1, 0.1, 0.277606242",
        "1, 1, 0.8, 2.320125395",
        "1, 1, 0.95, 5.180251602",
    })
    void quantilesOfTheLogNormal(double median, double sigma, double share, double quantile) {
        assertThat(draws(median, sigma).sumAt(share)).isCloseTo(quantile, withPercentage(3));
    }

    /**
     * One season's stock, textbook: bought at 5, sold at 7, the ratio 2/7 of a log-normal with mean ln of 50 and sigma 0.2
     * is 44.649 (printed 44.64). Spread of 0.3 here is the same sum with z = -0.565949.
     */
    @ParameterizedTest
    @CsvSource({"0.3, 42.194", "0.5, 37.678"})
    void theQuantileAtACriticalRatio(double sigma, double quantile) {
        assertThat(draws(50, sigma).sumAt(2 / 7.0)).isCloseTo(quantile, withPercentage(2));
    }
}
