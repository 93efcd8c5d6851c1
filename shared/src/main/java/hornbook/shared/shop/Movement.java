package hornbook.shared.shop;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
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
        implements ShopRecord {
    private static final String TAKES_BACK = "takes back ";

    /** The line that this one answers, as an undo writes it: together they are as if neither had been. */
    public Optional<String> takesBack() {
        return kind == MovementKind.CORRECTION && note.startsWith(TAKES_BACK)
                ? Optional.of(note.substring(TAKES_BACK.length()))
                : Optional.empty();
    }
}
