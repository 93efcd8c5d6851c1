package hornbook.catalogue.estimate;

import hornbook.shared.setting.Setting;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Books;
import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the shop charges, in its own money.
 *
 * @param hour of work
 * @param minimum covers taking in, test and write-up
 * @param handling added to the cost of materials, as a share: 0.15
 */
public record Rates(BigDecimal hour, BigDecimal minimum, BigDecimal handling) {
    /** @throws BadInput where one is negative */
    public Rates {
        if (hour.signum() < 0 || minimum.signum() < 0 || handling.signum() < 0) {
            throw new BadInput("rate, minimum and handling cannot be less than nothing: write 0 or more");
        }
    }

    /**
     * As told, else as the shop's settings say; empty where neither names a rate.
     *
     * @throws BadInput where a setting cannot be used
     */
    public static Optional<Rates> of(
            Books books, @Nullable BigDecimal hour, @Nullable BigDecimal minimum, @Nullable BigDecimal handling) {
        return told(books, Setting.HOURLY_RATE, hour)
                .map(rate -> new Rates(
                        rate,
                        told(books, Setting.MINIMUM_CHARGE, minimum).orElse(BigDecimal.ZERO),
                        told(books, Setting.MATERIALS_HANDLING, handling).orElse(BigDecimal.ZERO)));
    }

    private static Optional<BigDecimal> told(Books books, Setting setting, @Nullable BigDecimal told) {
        return told != null ? Optional.of(told) : setting.number(books);
    }
}
