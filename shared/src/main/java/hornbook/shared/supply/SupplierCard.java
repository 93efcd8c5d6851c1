package hornbook.shared.supply;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A supplier as it is shown.
 *
 * @param days from order to arrival of each delivery on record, shortest first; else as written down
 * @param typicalDays the middle of them; absent where there are none
 * @param packs in what packs it sells, in words
 * @param smallestOrder money under which it takes no order; absent for none
 * @param verdict keep, avoid or on trial; empty where nobody has judged
 * @param lots how many lots are bought there
 * @param orders how many orders are on their way from it
 */
public record SupplierCard(
        String id,
        String name,
        String place,
        List<Integer> days,
        @Nullable Integer typicalDays,
        String packs,
        @Nullable BigDecimal smallestOrder,
        String verdict,
        String why,
        int lots,
        int orders) {}
