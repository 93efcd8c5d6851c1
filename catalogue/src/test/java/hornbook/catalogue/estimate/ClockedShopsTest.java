package hornbook.catalogue.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ClockedShopsTest {
    /**
     * A few of the trial's 500 shops, whose effects are known. 144 jobs: three standard errors of a share of 50 and of 80
     * in 100 are 12.5 and 10, and jobs of one shop go together, so the bounds are wide; the long form holds 3 in 100.
     */
    @Test
    void estimatesAreHonestAndBetterThanTheBookAndTheMean() {
        ClockedShopsTrial.Tally all = ClockedShopsTrial.run(12, 3).get(0);
        assertThat(all).isNotNull();
        assertThat(all.under50()).isBetween(35.0, 65.0);
        assertThat(all.under80()).isBetween(67.0, 93.0);
        assertThat(all.error()).isLessThan(all.meanError()).isLessThan(all.bookError());
    }
}
