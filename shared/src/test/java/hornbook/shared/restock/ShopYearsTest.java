package hornbook.shared.restock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.shared.restock.ShopYears.Demand;
import hornbook.shared.restock.ShopYears.Item;
import hornbook.shared.restock.ShopYears.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A part of {@link ShopYearsBench}: what the list promises, it keeps. */
class ShopYearsTest {
    private static final List<Item> SHOP = ShopYears.items(40, 3);

    @Test
    void servesAsPromisedAndHoldsNoMoreThanTwoBinsThatServeAsWell() {
        Outcome ours = ShopYearsBench.play(SHOP, () -> ShopYears.ours(0.95));
        assertThat(ours.service()).isEqualTo(0.95, within(0.03));
        double cover = ShopYearsBench.coverOf(SHOP, ours.service(), false);
        Outcome bins = ShopYearsBench.play(SHOP, () -> ShopYears.twoBins(cover, false));
        assertThat(ours.stock()).isLessThanOrEqualTo(bins.stock());
    }

    /** Seldom taken, and unevenly: what is known from few takings alone does not break the promise. */
    @Test
    void servesLumpyArticlesAsPromised() {
        List<Item> lumpy = ShopYears.items(400, 11).stream()
                .filter(i -> i.demand() == Demand.LUMPY)
                .toList();
        assertThat(ShopYearsBench.play(lumpy, () -> ShopYears.ours(0.95)).service())
                .isEqualTo(0.95, within(0.03));
    }

    /** The control: a point that forgets that several are taken at once does not keep the promise. */
    @Test
    void withoutTheExcessItWouldNot() {
        List<Item> lumpy = SHOP.stream().filter(i -> i.demand() == Demand.LUMPY).toList();
        double with = ShopYearsBench.play(lumpy, () -> ShopYears.ours(0.95)).service();
        double without =
                ShopYearsBench.play(lumpy, () -> ShopYears.ours(0.95, false)).service();
        assertThat(without).isLessThan(with - 0.1);
    }
}
