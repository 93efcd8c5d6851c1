package hornbook.shared.pads;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A cup for which nothing is left within half a millimetre: a line to order, one piece.
 *
 * @param size by the shop's rule, mm
 * @param what to write on the order
 * @param lot the lot it would be bought for, where the shop has that size
 * @param supplier the supplier's id
 * @param typicalDays from order to arrival, by the supplier's own deliveries
 * @param promised when the horn is to be ready
 * @param why in a sentence, with whether it comes in time
 */
public record Shortage(
        @Nullable String job,
        String cup,
        BigDecimal size,
        String what,
        @Nullable String lot,
        @Nullable String supplier,
        @Nullable Integer typicalDays,
        @Nullable LocalDate promised,
        String why) {}
