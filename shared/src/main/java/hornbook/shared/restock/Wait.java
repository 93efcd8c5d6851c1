package hornbook.shared.restock;

import hornbook.shared.supply.Deliveries;
import java.util.Map;
import java.util.TreeMap;

/**
 * From looking at the list to having the goods: spans in months, each a past delivery's days and the days until the
 * list is looked at again.
 *
 * @param chances of each span, in all 1
 */
record Wait(double[] months, double[] chances) {
    private static final double DAYS_A_MONTH = 365.25 / 12;

    /** Taken where nothing is known of a supplier (common practice). */
    static final int UNKNOWN_DAYS = 14;

    private static final double[] ABOUT = {0.5, 0.75, 1.0, 1.25, 1.5};

    /** Under three deliveries: the typical one, half as much and half as much again. */
    static Wait of(Deliveries deliveries, int reviewDays) {
        Map<Double, Integer> days = new TreeMap<>();
        if (deliveries.enough()) {
            deliveries.days().forEach(d -> days.merge((double) d, 1, Integer::sum));
        } else {
            int typical = deliveries.typical().orElse(UNKNOWN_DAYS);
            for (double share : ABOUT) {
                days.merge(share * typical, 1, Integer::sum);
            }
        }
        double all = days.values().stream().mapToInt(n -> n).sum();
        return new Wait(
                days.keySet().stream()
                        .mapToDouble(d -> (d + reviewDays) / DAYS_A_MONTH)
                        .toArray(),
                days.values().stream().mapToDouble(n -> n / all).toArray());
    }
}
