package hornbook.shared.stock;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.MovementKind;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import hornbook.shared.store.Writing;

/**
 * Pieces that were found out to be something, taken out of a grab bag or any other lot. Each call is one deed that can
 * be undone. A bag that is counted has so many fewer; one known only roughly keeps its word. The ledgers of both say
 * what went where.
 */
public final class BagBook {
    private final Books books;
    private final Places places;
    private final Called called;

    public BagBook(Books books) {
        this.books = books;
        this.places = new Places(books);
        this.called = new Called(books);
    }

    /** They become a lot of their own. @param to the drawer or place where they are put */
    public Deed sortOut(String bag, int pieces, Piece piece, String to) {
        Spot spot = places.spot(to);
        return books.write(title(bag, pieces, piece.title() + " in " + called.spot(spot)), w -> {
            Lot made = piece.lot(w.nextId(Lot.class), spot);
            w.put(made);
            over(w, bag, pieces, made);
        });
    }

    /** They go to a lot of such pieces. */
    public Deed sortOutInto(String bag, int pieces, String known) {
        return books.write(title(bag, pieces, called.lot(known)), w -> {
            Lot to = new Ledger(w, books.today()).lot(known);
            if (bag.equals(known)) {
                throw new BadInput(bag + " cannot be sorted into itself: name another lot");
            }
            if (to.keepsake()) {
                throw new BadInput(known + " is a keepsake and stays as it is: make them a lot of their own");
            }
            over(w, bag, pieces, to);
        });
    }

    private String title(String bag, int pieces, String what) {
        return "sort " + pieces + " out of " + called.lot(bag) + ": " + what;
    }

    private void over(Writing w, String bag, int pieces, Lot to) {
        Ledger ledger = new Ledger(w, books.today());
        Lot from = ledger.lot(bag);
        refuse(from, pieces);
        ledger.move(from, MovementKind.CORRECTION, -pieces, null, "sorted out: " + to.title() + ", " + to.id());
        ledger.move(to, MovementKind.CORRECTION, pieces, null, "sorted out of " + from.title() + ", " + bag);
    }

    private static void refuse(Lot bag, int pieces) {
        if (pieces <= 0) {
            throw new BadInput(pieces + " pieces cannot be sorted out: name one or more");
        }
        if (bag.keepsake()) {
            throw new BadInput(bag.id() + " is a keepsake and stays as it is: take from another lot");
        }
        if (bag.count() instanceof Count.Exact(int there) && there < pieces) {
            throw new BadInput(bag.id() + " has " + there + " by the books, not " + pieces + ": count it first");
        }
    }
}
