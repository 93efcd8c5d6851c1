package hornbook.shared.restock;

import hornbook.shared.supply.Deliveries;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * From looking at the list to having the goods: equally likely spans in months, each a past delivery's days and the week
 * until the list is looked at again.
 */
record Wait(double[] months) {
    static final double DAYS_A_MONTH = 365.25 / 12;

    private static final int REVIEW_DAYS = 7;

    /** Taken where nothing is known of a supplier (common practice). */
    static final int UNKNOWN_DAYS = 14;

    /** Under three deliveries: the typical one, half as much and half as much again. */
    static Wait of(Deliveries deliveries) {
        if (deliveries.enough()) {
            return ofDays(deliveries.days().stream().mapToDouble(Integer::doubleValue));
        }
        int typical = deliveries.typical().orElse(UNKNOWN_DAYS);
        return ofDays(List.of(0.5, 0.75, 1.0, 1.25, 1.5).stream().mapToDouble(share -> share * typical));
    }

    private static Wait ofDays(DoubleStream days) {
        return new Wait(days.map(d -> (d + REVIEW_DAYS) / DAYS_A_MONTH).toArray());
    }
}
