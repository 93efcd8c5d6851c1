package hornbook.shared.restock;

import hornbook.shared.shop.Movement;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A lot's ledger lines as far as they tell of use and buying. */
final class LotLedger {
    /** A taking-out. */
    record Taken(LocalDate day, int pieces) {}

    private final List<Taken> taken = new ArrayList<>();
    private LocalDate first = LocalDate.MAX;
    private @Nullable LocalDate lastBought;
    private @Nullable BigDecimal lastPrice;

    void seen(LocalDate day) {
        first = day.isBefore(first) ? day : first;
    }

    void use(LocalDate day, int pieces) {
        taken.add(new Taken(day, pieces));
    }

    void unuse(LocalDate day, int pieces) {
        taken.remove(new Taken(day, pieces));
    }

    void bought(Movement receipt) {
        if (lastBought == null || !receipt.date().isBefore(lastBought)) {
            lastBought = receipt.date();
            lastPrice = receipt.unitPrice() == null ? lastPrice : receipt.unitPrice();
        }
    }

    LocalDate first() {
        return first;
    }

    List<Taken> taken() {
        return taken;
    }

    Optional<LocalDate> lastBought() {
        return Optional.ofNullable(lastBought);
    }

    Optional<BigDecimal> lastPrice() {
        return Optional.ofNullable(lastPrice);
    }
}
