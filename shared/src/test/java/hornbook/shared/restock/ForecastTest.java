package hornbook.shared.restock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class ForecastTest {
    private static Use use(int times, int... months) {
        Takings takings = Takings.NONE;
        for (int i = 0; i < times; i++) {
            takings = takings.and(1);
        }
        return new Use(months, takings, LocalDate.of(2026, 9, 1));
    }

    @Test
    void whatIsUsedNowAndThenIsForecastBySyntetosAndBoylan() {
        Use steady = use(4, 1, 0, 1, 0, 1, 0, 1, 0);
        assertThat(Forecast.of(steady).perMonth())
                .isEqualTo(Intermittent.of(steady.months(), 0.1).sba());
    }

    @Test
    void whatHasNotBeenUsedForTwiceTheUsualGapFades() {
        Use fading = use(4, 1, 1, 1, 1, 0, 0, 0, 0);
        assertThat(fading.fading()).isTrue();
        assertThat(Forecast.of(fading).perMonth()).isEqualTo(Math.pow(0.9, 4), within(1e-12));
        assertThat(use(4, 0, 1, 0, 1, 0, 1, 0, 1, 0, 0, 0).fading()).isFalse();
    }

    @Test
    void underThreeUsesItBorrowsFromItsKindAndSaysSo() {
        Use rare = use(1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1);
        Use often = use(9, 1, 1, 1, 1, 1, 1, 1, 1, 1, 0);
        Forecast lent = Forecast.of(rare, new KindUse(List.of(rare, often, often)));
        assertThat(lent.how()).contains("borrowed from its kind");
        assertThat(lent.perMonth()).isBetween(rare.mean(), often.mean());
    }

    /** Where all of a kind are used alike, chance alone explains the differences: the kind's mean is the best guess. */
    @Test
    void ofAKindThatIsAllAlikeItTakesTheMean() {
        Use once = use(1, 0, 0, 1, 0, 0);
        Use twice = use(2, 0, 1, 0, 1, 0);
        Forecast lent = Forecast.of(once, new KindUse(List.of(once, twice, once, twice)));
        assertThat(lent.perMonth()).isEqualTo(6.0 / 20, within(1e-12));
    }

    @Test
    void whereTheKindIsHardlyUsedEitherItSaysSo() {
        Use once = use(1, 0, 1);
        assertThat(Forecast.of(once, new KindUse(List.of(once))).how()).contains("so is its kind");
    }
}
