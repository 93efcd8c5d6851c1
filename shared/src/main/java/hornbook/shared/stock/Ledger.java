package hornbook.shared.stock;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.MovementKind;
import hornbook.shared.store.Writing;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** Adds lines to the ledger within a deed. */
final class Ledger {
    private final Writing writing;
    private final LocalDate today;

    Ledger(Writing writing, LocalDate today) {
        this.writing = writing;
        this.today = today;
    }

    Lot lot(String id) {
        return writing.find(Lot.class, id)
                .orElseThrow(() -> new BadInput("there is no lot " + id + ": look it up with “hornbook find”"));
    }

    String move(Lot lot, MovementKind kind, int qty, @Nullable String job, String note) {
        String id = writing.nextId(Movement.class);
        writing.put(new Movement(id, today, lot.id(), kind, qty, job, null, null, null, null, note));
        return id;
    }

    void receive(Lot lot, Receipt receipt) {
        writing.put(new Movement(
                writing.nextId(Movement.class),
                today,
                lot.id(),
                MovementKind.RECEIPT,
                receipt.pieces(),
                null,
                receipt.supplier(),
                receipt.order(),
                receipt.orderedOn(),
                receipt.unitPrice(),
                receipt.note()));
    }

    /** Brings the ledger of a lot to a number counted by hand. */
    void count(Lot lot, int pieces) {
        Lot exact = lot.count() instanceof Count.Exact ? lot : recounted(lot);
        int kept = exact.count() instanceof Count.Exact(int now) ? now : 0;
        if (kept != pieces) {
            move(exact, MovementKind.CORRECTION, pieces - kept, null, "counted " + pieces);
        }
    }

    /** The word makes way for a number: from here on the ledger speaks. */
    private Lot recounted(Lot lot) {
        writing.put(lot.withCount(Count.ZERO));
        return lot(lot.id());
    }
}
