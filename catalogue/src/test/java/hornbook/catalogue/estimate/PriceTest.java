package hornbook.catalogue.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.catalogue.estimate.EstimateAnswer.FromJobs;
import hornbook.shared.shop.BadInput;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Figures worked by hand after the rule of the trade notes: rate x minutes / 60, not under the smallest charge, and
 * materials x (1 + handling); rounded once, to cents. */
class PriceTest {
    private static final BigDecimal NONE = BigDecimal.ZERO;

    private static EstimateAnswer time(long p50, long p80) {
        return new EstimateAnswer(p50, p80, p50, new FromJobs(9, 9, 9, 9), "", List.of(), List.of(), List.of());
    }

    private static Rates rates(String hour, String minimum, String handling) {
        return new Rates(new BigDecimal(hour), new BigDecimal(minimum), new BigDecimal(handling));
    }

    @Test
    void theSpanRunsFromTheUsualToFourInFiveWithMaterialsInBoth() {
        // 68.50 x 261 / 60 = 297.975; 68.50 x 334 / 60 = 381.31666…; 85.40 x 1.15 = 98.21
        Price price = Price.of(time(261, 334), rates("68.50", "30", "0.15"), new BigDecimal("85.40"));
        assertThat(price.usual()).isEqualByComparingTo("396.19");
        assertThat(price.upTo()).isEqualByComparingTo("479.53");
        assertThat(price.materials()).isEqualByComparingTo("98.21");
        assertThat(price.stopLimit()).isEqualByComparingTo("480");
        assertThat(price.minimum()).isFalse();
    }

    /** The trade notes' example of one task: median 60 min, sigma 0.5, P80 91.4 min. */
    @Test
    void theSmallestChargeHoldsTillTheWorkIsMore() {
        Price price = Price.of(time(60, 91), rates("20", "25", "0"), NONE);
        assertThat(price.usual()).isEqualByComparingTo("25");
        assertThat(price.upTo()).isEqualByComparingTo("30.33");
        assertThat(price.minimum()).isTrue();
    }

    @Test
    void lessThanNothingIsRefused() {
        assertThatThrownBy(() -> rates("-1", "0", "0")).isInstanceOf(BadInput.class);
    }
}
