package hornbook.viewer.supply;

import hornbook.shared.supply.SupplierCard;
import hornbook.viewer.ask.Ask;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What is shown of the suppliers at one moment.
 *
 * @param chosen id of the one that is open; empty while none is
 * @param ask null while nothing is asked
 * @param trouble what went wrong, in a sentence
 */
record SuppliersView(
        List<SupplierCard> suppliers,
        String chosen,
        @Nullable Ask ask,
        @Nullable String trouble) {
    static final SuppliersView NOTHING = new SuppliersView(List.of(), "", null, null);

    SuppliersView with(List<SupplierCard> all) {
        return new SuppliersView(all, chosen, ask, trouble);
    }

    Optional<SupplierCard> open() {
        return suppliers.stream()
                .filter(supplier -> supplier.id().equals(chosen))
                .findFirst();
    }

    SuppliersView choosing(String id) {
        return new SuppliersView(suppliers, id, null, null);
    }

    SuppliersView asking(@Nullable Ask question) {
        return new SuppliersView(suppliers, chosen, question, null);
    }

    SuppliersView troubled(String why) {
        return ask == null
                ? new SuppliersView(suppliers, chosen, null, why)
                : new SuppliersView(suppliers, chosen, ask.troubled(why), null);
    }
}
