package hornbook.shared.supply;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * What a person says of a supplier; what is null was not said, and stays as it is.
 *
 * @param name what people call it
 * @param place where it is, as a town; not a place of the shop
 * @param days from order to arrival: a guess as {@code 10}, or those of past deliveries as {@code 8 9 12}
 * @param packs in what packs it sells, in words
 * @param smallestOrder money under which it takes no order; 0 for none
 */
public record SupplierSaid(
        @Nullable String name,
        @Nullable String place,
        @Nullable String days,
        @Nullable String packs,
        @Nullable BigDecimal smallestOrder) {
    boolean nothing() {
        return name == null && place == null && days == null && packs == null && smallestOrder == null;
    }

    static String or(@Nullable String said, String stands) {
        return said == null ? stands : said.strip();
    }
}
