package hornbook.shared.restock;

import hornbook.shared.shop.Movement;
import hornbook.shared.shop.MovementKind;
import hornbook.shared.store.View;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the ledger says of each lot's use and of each supplier's deliveries; lines are only added. */
final class Ledger {
    private final Map<String, LotLedger> lots = new HashMap<>();
    private final Map<String, List<Movement>> receipts = new HashMap<>();

    private boolean used;

    /** Whether any use is on record. */
    boolean used() {
        return used;
    }

    Optional<LotLedger> lot(String id) {
        return Optional.ofNullable(lots.get(id));
    }

    List<Movement> receipts(String supplier) {
        return receipts.getOrDefault(supplier, List.of());
    }

    /** @param view of the books the line stands in: where it takes another back, that one is looked up */
    void add(Movement movement, View view) {
        LotLedger lot = lots.computeIfAbsent(movement.lot(), id -> new LotLedger());
        lot.seen(movement.date());
        switch (movement.kind()) {
            case USE -> {
                used = true;
                lot.use(movement.date(), -movement.qty());
            }
            case RECEIPT -> {
                lot.bought(movement);
                if (movement.supplier() != null) {
                    receipts.computeIfAbsent(movement.supplier(), s -> new ArrayList<>())
                            .add(movement);
                }
            }
            case CORRECTION -> takenBack(movement, view).ifPresent(use -> lot.unuse(use.date(), -use.qty()));
            default -> {}
        }
    }

    /** The use that an undo has answered: as if it had not been. */
    private Optional<Movement> takenBack(Movement correction, View view) {
        return correction
                .takesBack()
                .flatMap(line -> view.find(Movement.class, line))
                .filter(m -> m.kind() == MovementKind.USE);
    }

    /** The day the books know of a lot first, for lots that have no line the day asked. */
    static LocalDate earliest(List<LotLedger> ledgers, LocalDate otherwise) {
        return ledgers.stream().map(LotLedger::first).min(LocalDate::compareTo).orElse(otherwise);
    }
}
