package hornbook.shared.stock;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Goods that came in.
 *
 * @param supplier who sent them, by number or name
 * @param order the open order they answer, in whole or in part
 */
public record Receipt(
        int pieces,
        @Nullable String supplier,
        @Nullable String order,
        @Nullable LocalDate orderedOn,
        @Nullable BigDecimal unitPrice,
        String note) {
    Receipt from(String id) {
        return new Receipt(pieces, id, order, orderedOn, unitPrice, note);
    }
}
