package hornbook.shared.store;

import hornbook.shared.shop.Movement;
import hornbook.shared.shop.MovementKind;
import java.util.List;

/** Lots of which the ledger says that more went out than ever came in. The books are whole; somebody forgot a line. */
final class Overdrawn {
    private static final String TO_DO =
            "run “hornbook check --repair”, which writes a correction up to none; then count it";

    private static final String LOTS = "select b.lot, b.qty from balance b join lot l on l.id = b.lot"
            + " where b.qty < 0 and l.rough is null and l.retired = 0 order by b.lot";

    /** A lot and how many pieces it is below none, as a number under nought. */
    private record Lot(String id, int pieces) {}

    private Overdrawn() {}

    private static List<Lot> lots(Query query) {
        return query.rows(LOTS, r -> new Lot(r.getString(1), r.getInt(2)));
    }

    static List<Problem> problems(Query query) {
        return lots(query).stream()
                .limit(Check.MOST_LINES)
                .map(lot -> new Problem(
                        "its ledger says " + lot.pieces() + ", and there cannot be fewer than none",
                        "lot " + lot.id(),
                        TO_DO))
                .toList();
    }

    static boolean is(Problem problem) {
        return problem.toDo().equals(TO_DO);
    }

    /** Writes what brings each of them up to none, as one deed. Gives what was done, in words. */
    static List<String> repair(Query query, Books books) {
        List<Lot> lots = lots(query);
        books.write(
                "correct what the ledger counts below none",
                w -> lots.forEach(lot -> w.put(correction(w, books, lot))));
        return lots.stream()
                .map(lot -> "lot " + lot.id() + ": a correction of +" + -lot.pieces() + " was written: count it")
                .toList();
    }

    private static Movement correction(Writing w, Books books, Lot lot) {
        String id = w.nextId(Movement.class);
        String note = "ledger was below none: to be counted";
        return new Movement(
                id,
                books.today(),
                lot.id(),
                MovementKind.CORRECTION,
                -lot.pieces(),
                null,
                null,
                null,
                null,
                null,
                note);
    }
}
