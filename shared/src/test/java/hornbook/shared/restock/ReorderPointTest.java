package hornbook.shared.restock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import hornbook.shared.exchange.Published;
import hornbook.shared.supply.Deliveries;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hipparchus.distribution.discrete.PascalDistribution;
import org.hipparchus.distribution.discrete.PoissonDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ReorderPointTest {
    private static final Pattern INPUT =
            Pattern.compile("lead-time mean ([\\d.]+)(?: variance ([\\d.]+).*)?, (?:P\\(X<=R\\) )?>= ([\\d.]+)");
    private static final Pattern CHANCE = Pattern.compile("cdf at R = ([\\d.]+)");
    private static final int WEEK = 7;
    private static final Wait ONE_MONTH = new Wait(new double[] {1}, new double[] {1});

    private static Forecast of(double mean, double variance) {
        return new Forecast(mean, variance, Takings.NONE, "");
    }

    /** reorder.csv: R's qpois and qnbinom. */
    static Stream<Map<String, String>> points() {
        return Published.rows("reorder.csv").stream()
                .filter(r -> List.of("rop_poisson", "rop_negbin").contains(r.get("kind")));
    }

    @ParameterizedTest
    @MethodSource("points")
    void isTheQuantileThatRGives(Map<String, String> row) {
        Matcher input = INPUT.matcher(row.get("input"));
        assertThat(input.matches()).isTrue();
        double mean = Double.parseDouble(input.group(1));
        double variance = input.group(2) == null ? mean : Double.parseDouble(input.group(2));
        int point = ReorderPoint.of(of(mean, variance), ONE_MONTH, Double.parseDouble(input.group(3)));
        assertThat(point).isEqualTo(Integer.parseInt(row.get("value")));
        Matcher chance = CHANCE.matcher(row.get("source"));
        assertThat(chance.find()).isTrue();
        assertThat(new Counts(mean, variance).atMost(point))
                .isEqualTo(Double.parseDouble(chance.group(1)), within(1e-9));
    }

    /**
     * Many small takings are nearly normal: reorder.csv, normal rows, in hundredths. 10 a week, sd 3, 4 weeks, 95 %: 49.869;
     * with a wait that itself spreads by a week 59.182. And one season (7 / 5, ratio 2/7, N(50, 20)): 38.681; the negative
     * binomial leans to the right, so the wider the spread the further it lies off.
     */
    @ParameterizedTest
    @CsvSource({
        "4000, 360000, 0.95, 4986.9, 1.5",
        "4000, 1360000, 0.95, 5918.2, 4",
        "5000, 4000000, 0.285714, 3868.1, 6"
    })
    void nearsTheNormal(double mean, double variance, double level, double point, double percent) {
        assertThat((double) ReorderPoint.of(of(mean, variance), ONE_MONTH, level))
                .isCloseTo(point, withPercentage(percent));
    }

    /** Hipparchus 4.0.3, an independent library, also where a naive start at exp(-mean) would be nought. */
    @ParameterizedTest
    @CsvSource({"0.02", "3.5", "40", "900"})
    void agreesWithALibraryOnPoisson(double mean) {
        PoissonDistribution library = new PoissonDistribution(mean);
        for (double level : List.of(0.51, 0.9, 0.95, 0.99)) {
            assertThat(ReorderPoint.of(of(mean, mean), ONE_MONTH, level))
                    .isEqualTo(library.inverseCumulativeProbability(level));
        }
    }

    @ParameterizedTest
    @CsvSource({"1, 0.4", "2, 0.5", "12, 0.1"})
    void agreesWithALibraryOnTheNegativeBinomial(int size, double chance) {
        PascalDistribution library = new PascalDistribution(size, chance);
        double mean = size * (1 - chance) / chance;
        for (double level : List.of(0.51, 0.9, 0.95, 0.99)) {
            assertThat(ReorderPoint.of(of(mean, mean / chance), ONE_MONTH, level))
                    .isEqualTo(library.inverseCumulativeProbability(level));
        }
    }

    /** The wait is drawn from the deliveries: the library's chances, each delivery as likely. */
    @Test
    void aLateDeliveryNowAndThenRaisesThePoint() {
        List<Integer> days = List.of(7, 8, 9, 60);
        int point = ReorderPoint.of(of(6, 6), Wait.of(new Deliveries(days), WEEK), 0.95);
        double below = 0;
        double at = 0;
        for (int day : days) {
            PoissonDistribution library = new PoissonDistribution(6 * (day + 7) / (365.25 / 12));
            below += library.cumulativeProbability(point - 1) / days.size();
            at += library.cumulativeProbability(point) / days.size();
        }
        assertThat(below).isLessThan(0.95);
        assertThat(at).isGreaterThanOrEqualTo(0.95);
        assertThat(point)
                .isGreaterThan(ReorderPoint.of(of(6, 6), Wait.of(new Deliveries(List.of(7, 8, 9)), WEEK), 0.95));
    }

    @ParameterizedTest
    @CsvSource({"'38', 19, 57", "'', 7, 21", "'10 20', 10, 30"})
    void underThreeDeliveriesTheTypicalOneIsTakenHalfAsLongToHalfAsLongAgain(
            String written, double least, double most) {
        List<Integer> days = written.isEmpty()
                ? List.of()
                : Stream.of(written.split(" ")).map(Integer::valueOf).toList();
        double[] months = Wait.of(new Deliveries(days), WEEK).months();
        assertThat(months[0] * 365.25 / 12 - 7).isEqualTo(least, within(1e-9));
        assertThat(months[months.length - 1] * 365.25 / 12 - 7).isEqualTo(most, within(1e-9));
    }

    /** By hand from the renewal formula: of takings of 1 and 3, P(taking > u) is 1, 1/2, 1/2, and the mean 2. */
    @Test
    void aTakingOfSeveralGoesBelowThePoint() {
        Takings takings = Takings.NONE.and(1).and(3);
        assertThat(takings.excess()).isEqualTo(0 * 0.5 + 1 * 0.25 + 2 * 0.25, within(1e-12));
        assertThat(takings.excessVariance()).isEqualTo(1 * 0.25 + 4 * 0.25 - 0.75 * 0.75, within(1e-12));
        assertThat(Takings.NONE.and(1).and(1).excess()).isZero();
    }

    /**
     * The predictive distribution of one more exponential size after n (Aitchison and Dunsmore 1975, from memory): drawn
     * anew, the level asked is reached on average; reckoned as if the mean were known, the control, it is not.
     */
    @ParameterizedTest
    @CsvSource({"3", "5", "9", "25"})
    void theLevelDaredReachesTheLevelAskedFromFewSizes(int n) {
        SplittableRandom random = new SplittableRandom(n);
        double dared = -Math.log(1 - ReorderPoint.dared(0.95, 1.0 / n));
        double known = -Math.log(1 - 0.95);
        int draws = 200_000;
        int held = 0;
        int control = 0;
        for (int i = 0; i < draws; i++) {
            double mean = 0;
            for (int k = 0; k < n; k++) {
                mean -= Math.log(1 - random.nextDouble()) / n;
            }
            double next = -Math.log(1 - random.nextDouble());
            held += next <= dared * mean ? 1 : 0;
            control += next <= known * mean ? 1 : 0;
        }
        assertThat((double) held / draws).isEqualTo(0.95, within(0.003));
        assertThat((double) control / draws).isLessThan(0.95 - 0.1 / n);
    }

    @Test
    void likeTakingsLeaveNoDoubt() {
        Takings like = Takings.NONE.and(5).and(5).and(5).and(5);
        assertThat(like.doubt()).isZero();
        assertThat(ReorderPoint.dared(0.95, like.doubt())).isEqualTo(0.95);
        Takings uneven = Takings.NONE.and(1).and(2).and(3).and(10);
        // Mean 4, variance 50 / 3: twice that over 16, over four takings.
        assertThat(uneven.doubt()).isEqualTo(2 * (50.0 / 3) / 16 / 4, within(1e-12));
        assertThat(ReorderPoint.dared(0.95, uneven.doubt())).isGreaterThan(0.99);
    }
}
