package hornbook.shared.shop;

import java.time.LocalDate;

/** Ordered and not yet here. */
public record OpenOrder(String orderRef, String lot, int qty, String supplier, LocalDate orderedOn)
        implements ShopRecord {
    @Override
    public String id() {
        return orderRef;
    }
}
