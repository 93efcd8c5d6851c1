package hornbook.shared.shop;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A line of the stock ledger: quantity in (positive) or out of a lot. Never changed once written. */
public record Movement(
        String id,
        LocalDate date,
        String lot,
        MovementKind kind,
        int qty,
        @Nullable String job,
        @Nullable String supplier,
        @Nullable String orderRef,
        @Nullable LocalDate orderedOn,
        @Nullable BigDecimal unitPrice,
        String note)
        implements ShopRecord {}
