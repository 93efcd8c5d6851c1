package hornbook.shared.restock;

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
        return supplier.map(s -> deliveries
                        .typical()
                        .map(days -> s.name() + (days == 0 ? " has it the same day" : " takes " + days + " days or so"))
                        .orElse(s.name() + " has no delivery on record"))
                .orElse("no supplier is known");
    }

    List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        supplier.filter(s -> !deliveries.enough()).ifPresent(s -> remarks.add(few(s)));
        avoid.ifPresent(why -> remarks.add(why
                + deliveries
                        .typical()
                        .map(days -> " It takes " + days + " days.")
                        .orElse("")));
        return remarks;
    }

    private String few(Supplier supplier) {
        return deliveries
                .typical()
                .map(days -> "%s: %d on record, so %d days half as many more or less are reckoned with"
                        .formatted(supplier.name(), deliveries.days().size(), days))
                .orElse(
                        "%s: no delivery on record, so %d days half as many more or less are reckoned with: ask how long"
                                .formatted(supplier.name(), Wait.UNKNOWN_DAYS));
    }
}
