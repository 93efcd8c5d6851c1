package hornbook.shared.exchange;

import hornbook.shared.shop.Count;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.MovementKind;
import hornbook.shared.store.Writing;
import java.time.LocalDate;
import java.util.List;

/** A lot's number is its ledger's sum: where a file counts otherwise, a ledger line says so. */
record LotCounts(Writing writing, LocalDate today, List<String> remarks) {

    /** Makes the ledger agree with the lot as read; was there anything to write? */
    boolean agree(Lot lot) {
        Count now = writing.find(Lot.class, lot.id()).map(Lot::count).orElse(lot.count());
        if (!(lot.count() instanceof Count.Exact(int wanted)) || now.equals(lot.count())) {
            return false;
        }
        int difference = wanted - (now instanceof Count.Exact(int pieces) ? pieces : 0);
        boolean first = writing.where(Movement.class, "lot", lot.id()).isEmpty();
        if (!first) {
            remarks.add("lots.csv: " + lot.id() + " counts " + wanted + ", its ledger " + (wanted - difference)
                    + ": a correction was written");
        }
        writing.put(new Movement(
                writing.nextId(Movement.class),
                today,
                lot.id(),
                first ? MovementKind.OPENING : MovementKind.CORRECTION,
                difference,
                null,
                null,
                null,
                null,
                null,
                "count at import"));
        return true;
    }
}
