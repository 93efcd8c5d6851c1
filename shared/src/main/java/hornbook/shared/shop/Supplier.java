package hornbook.shared.shop;

import java.util.Arrays;
import java.util.List;

/** Who sells to the shop; lead days are those of past deliveries. */
public record Supplier(
        String id, String name, String place, String leadDaysObserved, String packs, String verdict, String why)
        implements ShopRecord {
    /** Days from order to arrival of each delivery on record. */
    public List<Integer> leadDays() {
        return leadDaysObserved.isBlank()
                ? List.of()
                : Arrays.stream(leadDaysObserved.trim().split(" +"))
                        .map(Integer::valueOf)
                        .toList();
    }
}
