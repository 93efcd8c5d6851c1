package hornbook.shared.restock;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.OpenOrder;
import hornbook.shared.shop.Supplier;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import hornbook.shared.store.Writing;
import hornbook.shared.supply.Judged;
import hornbook.shared.supply.Suppliers;
import hornbook.shared.supply.Verdict;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is written down about buying: what was ordered, and verdicts. Goods that come in are received into their lot. */
public final class OrderBook {
    private static final int MOST = 100_000;

    private final Books books;
    private final Suppliers suppliers;

    public OrderBook(Books books) {
        this.books = books;
        this.suppliers = new Suppliers(books);
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
        Map<String, Integer> pieces = new LinkedHashMap<>();
        for (RestockLine line : lines) {
            if (line.lot() == null || line.order() < 1) {
                throw new BadInput(line.what() + ": "
                        + (line.lot() == null
                                ? "the shop keeps no such lot: make one first"
                                : "nothing is to be ordered: " + line.why()));
            }
            pieces.merge(line.lot(), line.order(), Integer::sum);
        }
        return wentOut(supplier, pieces);
    }

    /**
     * What was ordered today, whatever the list says.
     *
     * @param supplier by number or name
     * @param pieces how many of which lot; a lot without a supplier is this one's from now on
     * @throws BadInput where there is no such supplier or lot, or nothing to order
     */
    public Deed wentOut(String supplier, Map<String, Integer> pieces) {
        Supplier from = suppliers.named(supplier);
        return books.write(
                "order from " + from.name(),
                w -> pieces.forEach((id, many) -> {
                    Lot lot = lot(w, id);
                    if (many < 1 || many > MOST) {
                        throw new BadInput(
                                many + " of " + lot.title() + " cannot be ordered: write a number from 1 to " + MOST);
                    }
                    if (lot.supplier() == null) {
                        w.put(lot.boughtFrom(from.id()));
                    }
                    w.put(new OpenOrder(w.nextId(OpenOrder.class), id, many, from.id(), books.today()));
                }));
    }

    /** A verdict on all that a supplier sells. @param called by number or name */
    public Deed supplier(String called, Verdict verdict, String why) {
        Judged judged = new Judged(verdict, why);
        Supplier s = suppliers.named(called);
        return books.write(
                s.name() + ": " + verdict.written(),
                w -> w.put(new Supplier(
                        s.id(),
                        s.name(),
                        s.place(),
                        s.leadDaysObserved(),
                        s.packs(),
                        verdict.written(),
                        judged.why())));
    }

    /** A verdict on one lot's goods, of this batch; it goes before the supplier's. */
    public Deed lot(String id, Verdict verdict, String why) {
        Judged judged = new Judged(verdict, why);
        String called = books.find(Lot.class, id).map(Lot::title).orElse(id);
        return books.write(called + ": " + verdict.written(), w -> w.put(judged.on(lot(w, id), books.today())));
    }

    private static Lot lot(Writing writing, String id) {
        return writing.find(Lot.class, id)
                .orElseThrow(() -> new BadInput("there is no lot " + id + ": look it up with “hornbook find”"));
    }
}
