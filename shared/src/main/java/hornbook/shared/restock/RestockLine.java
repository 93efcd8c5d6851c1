package hornbook.shared.restock;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something to order, or to look at before ordering.
 *
 * @param lot absent for goods the shop has no lot of
 * @param drawer id of the drawer or place of the lot
 * @param supplier id; absent where none is known
 * @param onHand pieces that count: no reserve, no quality to avoid
 * @param counted few, some or plenty, where it was counted by eye: {@code onHand} is then the least that means
 * @param onOrder pieces on their way
 * @param wanted pieces that taken-in jobs want
 * @param reorderPoint order once what is free and on order is no more
 * @param order pieces in whole packs; 0 where there is something to do first, which {@code why} says
 * @param typicalDays of the supplier from order to arrival
 * @param why in a sentence
 * @param remarks what else to know before ordering
 * @param usesByMonth pieces a month, oldest first, the last month ending today: for a plot
 * @param lastUse the day of it
 */
public record RestockLine(
        @Nullable String lot,
        @Nullable String drawer,
        String what,
        @Nullable String supplier,
        @Nullable String supplierName,
        int onHand,
        @Nullable String counted,
        int onOrder,
        int wanted,
        int reorderPoint,
        int order,
        int pack,
        @Nullable Integer typicalDays,
        String why,
        List<String> remarks,
        List<Integer> usesByMonth,
        @Nullable LocalDate lastUse) {}
