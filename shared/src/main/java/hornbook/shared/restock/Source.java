package hornbook.shared.restock;

import hornbook.shared.shop.Counted;
import hornbook.shared.shop.Supplier;
import hornbook.shared.supply.Deliveries;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where an article comes from.
 *
 * @param avoid why not to buy it there again
 */
record Source(Optional<Supplier> supplier, Deliveries deliveries, Optional<String> avoid) {

    /** When the goods come, as the end of a sentence. */
    String days() {
        if (avoid.isPresent()) {
            return supplier.map(s -> s.name() + " is to be avoided").orElse("it is to be avoided");
        }
        return supplier.map(s -> deliveries
                        .typical()
                        .map(days -> s.name()
                                + (days == 0 ? " has it the same day" : " takes " + Counted.of(days, "day") + " or so"))
                        .orElse(s.name() + " has no delivery on record"))
                .orElse("no supplier is known");
    }

    List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        supplier.filter(s -> avoid.isEmpty() && !deliveries.enough()).ifPresent(s -> remarks.add(few(s)));
        avoid.ifPresent(why -> remarks.add(why
                + deliveries
                        .typical()
                        .map(days -> " It takes " + Counted.of(days, "day") + ".")
                        .orElse("")));
        return remarks;
    }

    private String few(Supplier supplier) {
        return deliveries
                .typical()
                .map(days -> supplier.name() + ": " + deliveries.days().size()
                        + (deliveries.days().size() == 1 ? " delivery" : " deliveries") + " on record" + between(days))
                .orElse(supplier.name() + ": no delivery on record" + between(Wait.UNKNOWN_DAYS) + ": ask how long");
    }

    private static String between(int days) {
        return ", so anything from %d to %d days is reckoned with".formatted(days / 2, days + (days + 1) / 2);
    }
}
