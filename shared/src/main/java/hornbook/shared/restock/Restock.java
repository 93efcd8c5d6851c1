package hornbook.shared.restock;

import hornbook.shared.setting.Setting;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.OpenOrder;
import hornbook.shared.shop.Supplier;
import hornbook.shared.store.Books;
import hornbook.shared.store.View;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Answers what is about to run out and what to order: free stock against the demand until a delivery comes. Keeps what it
 * has read, so that the list after one change costs little; one of it serves a shop.
 */
public final class Restock {
    private final Books books;
    private final Holdings holdings = new Holdings();

    public Restock(Books books) {
        this.books = books;
    }

    /**
     * The list.
     *
     * @throws BadInput where a wanted lot is not in the books, or a setting cannot be used
     */
    public synchronized RestockAnswer ask(RestockQuestion question) {
        return books.reading(view -> {
            holdings.catchUp(view);
            return new Round(view, holdings, question, Keeping.of(view)).answer();
        });
    }

    /** What is ordered and not yet here, the oldest order first. */
    public synchronized List<OnTheWay> onTheWay() {
        return books.reading(view -> {
            holdings.catchUp(view);
            return view.all(OpenOrder.class).stream()
                    .sorted(Comparator.comparing(OpenOrder::orderedOn).thenComparing(OpenOrder::orderRef))
                    .map(order -> onTheWay(view, order))
                    .toList();
        });
    }

    private OnTheWay onTheWay(View view, OpenOrder order) {
        Optional<Supplier> supplier = view.find(Supplier.class, order.supplier());
        LocalDate expected = supplier.flatMap(s -> holdings.deliveries(s).typical())
                .map(days -> order.orderedOn().plusDays(days))
                .orElse(null);
        return new OnTheWay(
                order.orderRef(),
                order.lot(),
                view.find(Lot.class, order.lot()).map(Lot::title).orElse(order.lot()),
                order.qty(),
                order.supplier(),
                supplier.map(Supplier::name).orElse(order.supplier()),
                order.orderedOn(),
                expected,
                expected != null && expected.isBefore(view.today()));
    }

    /**
     * The lines to order, a list a supplier, with what it would cost at the last prices paid.
     *
     * @throws BadInput where the setting of smallest orders cannot be read
     */
    public synchronized List<OrderList> orders(RestockAnswer answer) {
        Map<String, BigDecimal> prices = new HashMap<>();
        answer.lines().stream()
                .flatMap(line -> Optional.ofNullable(line.lot()).stream())
                .forEach(lot -> holdings.ledger()
                        .lot(lot)
                        .flatMap(LotLedger::lastPrice)
                        .ifPresent(price -> prices.put(lot, price)));
        return OrderList.of(answer.lines(), prices, Setting.SMALLEST_ORDER.bySupplier(books));
    }
}
