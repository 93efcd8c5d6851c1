package hornbook.shared.stock;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.MovementKind;
import hornbook.shared.shop.PartUsed;
import hornbook.shared.store.Writing;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Taking pieces out of a lot.
 *
 * @param job the job they are for, null where for none
 * @param fromReserve take from it although it is set aside
 */
public record Taking(String lot, int pieces, @Nullable String job, String whatFor, boolean fromReserve) {

    /** Takes them out within a deed, and notes them on the job. Gives the ledger line. */
    String into(Writing writing, LocalDate today) {
        Ledger ledger = new Ledger(writing, today);
        Lot from = ledger.lot(lot);
        refuseWhatIsKept(from);
        if (job != null && writing.find(Job.class, job).isEmpty()) {
            throw new BadInput("there is no job " + job + ": look it up with “hornbook find”");
        }
        String line = ledger.move(from, MovementKind.USE, -pieces, job, whatFor);
        if (job != null) {
            writing.put(new PartUsed(writing.nextId(PartUsed.class), job, lot, pieces, line, whatFor));
        }
        return line;
    }

    private void refuseWhatIsKept(Lot from) {
        if (pieces <= 0) {
            throw new BadInput(pieces + " pieces cannot be taken: name one or more");
        }
        if (from.keepsake()) {
            throw new BadInput(lot + " is a keepsake and is never used: measure it and copy it");
        }
        if (from.reserve() && !fromReserve) {
            throw new BadInput(lot + " is set aside as reserve: say --reserve to take from it all the same");
        }
        if (from.count() instanceof Count.Exact(int there) && there < pieces) {
            throw new BadInput(
                    lot + " has " + there + " by the books, not " + pieces + ": count it first if there are more");
        }
    }
}
