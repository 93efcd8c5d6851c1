package hornbook.shared.restock;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.OpenOrder;
import hornbook.shared.shop.Supplier;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import hornbook.shared.store.Writing;
import hornbook.shared.supply.Judged;
import hornbook.shared.supply.Verdict;
import java.util.List;

/** What is written down about buying: what was ordered, and verdicts. Goods that come in are received into their lot. */
public final class OrderBook {
    private final Books books;

    public OrderBook(Books books) {
        this.books = books;
    }

    /**
     * What was ordered today from a supplier, so that it is not ordered twice; each line gets a number of its own.
     *
     * @param lines those of the list; one without a lot or with nothing to order is refused
     */
    public Deed ordered(String supplier, List<RestockLine> lines) {
        if (lines.isEmpty()) {
            throw new BadInput("nothing to order from " + supplier + ": name a line of “hornbook restock”");
        }
        return books.write("order from " + supplier, w -> {
            known(w, supplier);
            for (RestockLine line : lines) {
                if (line.lot() == null || line.order() < 1) {
                    throw new BadInput(line.what() + ": "
                            + (line.lot() == null
                                    ? "the shop keeps no such lot: make one first"
                                    : "nothing is to be ordered: " + line.why()));
                }
                w.put(new OpenOrder(w.nextId(OpenOrder.class), line.lot(), line.order(), supplier, books.today()));
            }
        });
    }

    /** A verdict on all that a supplier sells. */
    public Deed supplier(String id, Verdict verdict, String why) {
        Judged judged = new Judged(verdict, why);
        return books.write(id + ": " + verdict.written(), w -> {
            Supplier s = known(w, id);
            w.put(new Supplier(
                    s.id(), s.name(), s.place(), s.leadDaysObserved(), s.packs(), verdict.written(), judged.why()));
        });
    }

    /** A verdict on one lot's goods, of this batch; it goes before the supplier's. */
    public Deed lot(String id, Verdict verdict, String why) {
        Judged judged = new Judged(verdict, why);
        return books.write(id + ": " + verdict.written(), w -> {
            Lot lot = w.find(Lot.class, id)
                    .orElseThrow(() -> new BadInput("lot " + id + " is not in the books: see “hornbook find”"));
            w.put(judged.on(lot, books.today()));
        });
    }

    private static Supplier known(Writing writing, String id) {
        return writing.find(Supplier.class, id)
                .orElseThrow(() -> new BadInput("supplier " + id + " is not in the books: "
                        + "write the number as it stands in suppliers.csv, as sup-v-…"));
    }
}
