package hornbook.shared.restock;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Ordered and not yet here.
 *
 * @param order its number
 * @param what title of the lot
 * @param supplierName as people call it
 * @param expected the usual day of arrival; absent where the supplier has no delivery on record
 * @param late true once that day has passed
 */
public record OnTheWay(
        String order,
        String lot,
        String what,
        int pieces,
        String supplier,
        String supplierName,
        LocalDate orderedOn,
        @Nullable LocalDate expected,
        boolean late) {}
