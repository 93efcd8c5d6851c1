package hornbook.shared.stock;

import hornbook.shared.measure.SizeReader;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.MovementKind;
import hornbook.shared.shop.OpenOrder;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import hornbook.shared.store.Writing;
import hornbook.shared.supply.Judged;
import hornbook.shared.supply.Suppliers;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What hands do to stock. Each call is one deed that can be undone; a refusal says why and changes nothing. */
public final class StockBook {
    /** More than any drawer holds. */
    private static final int MOST = 1_000_000;

    private final Books books;
    private final Places places;
    private final Suppliers suppliers;
    private final Called called;

    public StockBook(Books books) {
        this.books = books;
        this.places = new Places(books);
        this.suppliers = new Suppliers(books);
        this.called = new Called(books);
    }

    /** Counted by hand: a number becomes a ledger line, a word replaces the number. */
    public Deed count(String lot, Count counted) {
        return books.write("count " + counted.written() + " of " + called.lot(lot), w -> {
            Ledger ledger = new Ledger(w, today());
            Lot there = ledger.lot(lot);
            switch (counted) {
                case Count.Exact(int pieces) when pieces >= 0 -> ledger.count(there, pieces);
                case Count.Exact(int pieces) ->
                    throw new BadInput(pieces + " pieces cannot lie in a drawer: count again");
                case Count.Rough word -> w.put(there.withCount(word));
            }
        });
    }

    /** Takes pieces out, for a job or for none. */
    public Deed use(Taking taking) {
        String forJob = taking.job() == null ? "" : " for " + taking.job();
        return books.write(
                "take " + taking.pieces() + " of " + called.lot(taking.lot()) + forJob, w -> taking.into(w, today()));
    }

    /** Goods came in from a supplier; an order they answer is closed, or kept open for the rest. */
    public Deed receive(String lot, Receipt receipt) {
        return receive(lot, receipt, null);
    }

    /**
     * As {@link #receive(String, Receipt)}, with what the goods were found to be when they were unpacked. Where a
     * substitute came, its lot is not the one that was ordered.
     */
    public Deed receive(String lot, Receipt receipt, @Nullable Judged judged) {
        return books.write("receive " + receipt.pieces() + " into " + called.lot(lot), w -> {
            Ledger ledger = new Ledger(w, today());
            Receipt told = answering(lot, receipt);
            ledger.receive(boughtFrom(w, ledger.lot(lot), told.supplier()), told);
            if (judged != null) {
                w.put(judged.on(ledger.lot(lot), today()));
            }
            if (told.order() != null) {
                OpenOrder order = w.find(OpenOrder.class, told.order()).orElseThrow();
                w.retire(OpenOrder.class, order.id());
                int rest = order.qty() - told.pieces();
                if (rest > 0) {
                    w.put(new OpenOrder(order.orderRef(), order.lot(), rest, order.supplier(), order.orderedOn()));
                }
            }
        });
    }

    /** Who sent goods first is who is asked for more. */
    private static Lot boughtFrom(Writing w, Lot lot, @Nullable String supplier) {
        if (supplier == null || lot.supplier() != null) {
            return lot;
        }
        Lot bought = lot.boughtFrom(supplier);
        w.put(bought);
        return bought;
    }

    private Receipt answering(String lot, Receipt receipt) {
        if (receipt.pieces() <= 0 || receipt.pieces() > MOST) {
            throw new BadInput(receipt.pieces() + " pieces cannot come in: name 1 to " + MOST);
        }
        BigDecimal price = receipt.unitPrice();
        if (price != null && price.signum() < 0) {
            throw new BadInput(price.toPlainString() + " is no price: write what one piece cost, as 0.85");
        }
        if (receipt.order() == null) {
            String from = receipt.supplier();
            return from == null ? receipt : receipt.from(suppliers.named(from).id());
        }
        OpenOrder order = books.find(OpenOrder.class, receipt.order())
                .orElseThrow(() -> new BadInput(
                        "there is no open order " + receipt.order() + ": leave it out, or see “hornbook restock”"));
        if (!order.lot().equals(lot) && receipt.note().isBlank()) {
            throw new BadInput("order " + order.orderRef() + " is for " + called.lot(order.lot()) + ", not for "
                    + called.lot(lot) + ": name the lot it came into, or say that it is a substitute with --note");
        }
        return new Receipt(
                receipt.pieces(),
                order.supplier(),
                order.orderRef(),
                order.orderedOn(),
                receipt.unitPrice(),
                receipt.note());
    }

    /** Pieces saved from a horn. */
    public Deed salvage(String lot, int pieces, String from) {
        if (from.isBlank()) {
            throw new BadInput("say from which horn they come, as “parts horn A”");
        }
        return books.write("salvage " + pieces + " into " + called.lot(lot), w -> {
            Ledger ledger = new Ledger(w, today());
            ledger.move(ledger.lot(lot), MovementKind.SALVAGE, positive(pieces), null, "from " + from);
        });
    }

    /** A new lot with what lies in it. @param to the drawer or place where it is put */
    public Deed add(Piece piece, String to, Count count) {
        Spot spot = places.spot(to);
        if (count instanceof Count.Exact(int pieces) && pieces < 0) {
            throw new BadInput(pieces + " pieces cannot be put in: name none or more");
        }
        return books.write("something new: " + piece.title(), w -> {
            Lot made = piece.lot(w.nextId(Lot.class), spot);
            w.put(made.withCount(count instanceof Count.Rough ? count : Count.ZERO));
            if (count instanceof Count.Exact(int pieces) && pieces > 0) {
                new Ledger(w, today()).move(made, MovementKind.OPENING, pieces, null, "put in");
            }
        });
    }

    /** The whole lot goes to another drawer or place. */
    public Deed move(String lot, String to) {
        Spot spot = places.spot(to);
        refuseThere(lot, spot);
        return change(
                lot,
                "move " + called.lot(lot) + " to " + called.spot(spot),
                there -> there.lyingIn(spot.drawer(), spot.place()));
    }

    private void refuseThere(String lot, Spot spot) {
        books.find(Lot.class, lot)
                .filter(there -> there.lies().equals(spot.id()))
                .ifPresent(there -> {
                    throw new BadInput(there.title() + " lies there already: name another place");
                });
    }

    /** Some of the pieces become a lot of their own, in another place or in the same. */
    public Deed split(String lot, int pieces, String to) {
        Spot spot = places.spot(to);
        return books.write(
                "split " + pieces + " off " + called.lot(lot),
                w -> apart(new Ledger(w, today()), w, lot, pieces, made -> made.lyingIn(spot.drawer(), spot.place())));
    }

    private static void apart(Ledger ledger, Writing w, String lot, int pieces, UnaryOperator<Lot> how) {
        Lot from = ledger.lot(lot);
        if (from.count() instanceof Count.Exact(int there) && there < pieces) {
            throw new BadInput(lot + " has " + there + " by the books, not " + pieces + ": count it first");
        }
        Lot made = how.apply(from.apartAs(w.nextId(Lot.class)));
        w.put(made);
        if (from.count() instanceof Count.Exact) {
            ledger.move(from, MovementKind.CORRECTION, -positive(pieces), null, "split off into " + made.id());
        }
        ledger.move(made, MovementKind.CORRECTION, positive(pieces), null, "split off " + lot);
    }

    /** All pieces of one lot go to another of the same kind; the emptied lot is retired. */
    public Deed join(String lot, String into) {
        return books.write("join " + called.lot(lot) + " to " + called.lot(into), w -> {
            Ledger ledger = new Ledger(w, today());
            Lot from = ledger.lot(lot);
            Lot to = ledger.lot(into);
            if (lot.equals(into)) {
                throw new BadInput(lot + " cannot be joined to itself: name another lot");
            }
            if (!from.item().equals(to.item())) {
                throw new BadInput(lot + " is " + from.item() + ", " + into + " is " + to.item()
                        + ": only like parts can be joined");
            }
            if (from.count() instanceof Count.Exact(int a) && to.count() instanceof Count.Exact) {
                ledger.move(from, MovementKind.CORRECTION, -a, null, "joined to " + into);
                ledger.move(to, MovementKind.CORRECTION, a, null, "joined from " + lot);
            } else if (to.count() instanceof Count.Exact) {
                throw new BadInput(lot + " is counted only roughly: count it, then join");
            }
            w.retire(Lot.class, lot);
        });
    }

    /** What it is, said anew. @throws BadInput where that cannot be, or says nothing new */
    public Deed describe(String lot, LotSaid said, SizeReader sizes) {
        String from = said.supplier();
        LotSaid known = from == null || from.isBlank()
                ? said
                : said.from(suppliers.named(from).id());
        return change(lot, "put right what " + called.lot(lot) + " is", there -> known.on(there, sizes));
    }

    /** Set aside, and not offered unless asked for; or let go again. */
    public Deed setAside(String lot, boolean reserve) {
        String title = (reserve ? "set aside " : "release ") + called.lot(lot);
        return change(lot, title, there -> otherwise(there, there.withReserve(reserve), "set aside", reserve));
    }

    /** Kept as a pattern and never offered; or no longer. */
    public Deed keepsake(String lot, boolean keepsake) {
        String title =
                keepsake ? "keep " + called.lot(lot) + " as a pattern" : called.lot(lot) + " is no keepsake any more";
        return change(lot, title, there -> otherwise(there, there.withKeepsake(keepsake), "a pattern", keepsake));
    }

    /** Out of use; it can be brought back. */
    public Deed retire(String lot) {
        return books.write("retire " + called.lot(lot), w -> w.retire(Lot.class, lot));
    }

    /** In use again, where it lay and with what the ledger says. */
    public Deed bringBack(String lot) {
        return books.write("bring back " + called.lot(lot), w -> w.bringBack(Lot.class, lot));
    }

    /** Takes everything off a parts horn, or out of another place, and lays it in one drawer or place. */
    public Deed strip(String from, String to) {
        Spot bare = places.spot(from);
        Spot spot = places.spot(to);
        List<Lot> lots = books.where(Lot.class, bare.drawer() == null ? "place" : "drawer", bare.id());
        if (lots.isEmpty() || bare.equals(spot)) {
            throw new BadInput(from + (lots.isEmpty() ? " has nothing on it" : " cannot be emptied into itself")
                    + ": name another place");
        }
        return books.write(
                "strip " + called.spot(bare) + " into " + called.spot(spot),
                w -> lots.forEach(lot -> w.put(lot.lyingIn(spot.drawer(), spot.place()))));
    }

    private static Lot otherwise(Lot was, Lot now, String what, boolean is) {
        if (now.equals(was)) {
            throw new BadInput(was.title() + (is ? " is " : " is not ") + what + " already: nothing is to be done");
        }
        return now;
    }

    private Deed change(String lot, String title, UnaryOperator<Lot> how) {
        return books.write(title, w -> w.put(how.apply(new Ledger(w, today()).lot(lot))));
    }

    private static int positive(int pieces) {
        if (pieces <= 0) {
            throw new BadInput(pieces + " pieces cannot be moved: name one or more");
        }
        return pieces;
    }

    private LocalDate today() {
        return books.today();
    }

    /** The lots that a deed touched, itself or by a ledger line, as they are now. */
    public List<LotCard> after(Deed deed) {
        Stock stock = new Stock(books);
        Stream<String> moved = books.touched(deed, Movement.class).stream()
                .flatMap(id -> books.find(Movement.class, id).stream())
                .map(Movement::lot);
        return Stream.concat(books.touched(deed, Lot.class).stream(), moved)
                .distinct()
                .flatMap(id -> stock.lot(id).stream())
                .toList();
    }
}
