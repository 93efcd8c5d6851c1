package hornbook.catalogue.estimate;

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
    /** Names of the settings that hold them, each a number. */
    public static final String HOUR = "hourly_rate";

    public static final String MINIMUM = "minimum_charge";
    public static final String HANDLING = "materials_handling";

    /** @throws BadInput where one is negative */
    public Rates {
        if (hour.signum() < 0 || minimum.signum() < 0 || handling.signum() < 0) {
            throw new BadInput("rate, minimum and handling cannot be less than nothing: write 0 or more");
        }
    }

    /**
     * As told, else as the shop's settings say; empty where neither names a rate.
     *
     * @throws BadInput where a setting is no number
     */
    public static Optional<Rates> of(
            Books books, @Nullable BigDecimal hour, @Nullable BigDecimal minimum, @Nullable BigDecimal handling) {
        Optional<BigDecimal> rate = told(books, HOUR, hour);
        return rate.map(r -> new Rates(
                r,
                told(books, MINIMUM, minimum).orElse(BigDecimal.ZERO),
                told(books, HANDLING, handling).orElse(BigDecimal.ZERO)));
    }

    private static Optional<BigDecimal> told(Books books, String name, @Nullable BigDecimal told) {
        return told != null ? Optional.of(told) : books.setting(name).map(written -> number(name, written));
    }

    private static BigDecimal number(String name, String written) {
        try {
            return new BigDecimal(written.replace("\"", "").strip());
        } catch (NumberFormatException e) {
            throw new BadInput("setting " + name + " is " + written + ": write a number, as 48.50");
        }
    }
}
