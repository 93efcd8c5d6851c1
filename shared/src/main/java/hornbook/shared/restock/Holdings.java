package hornbook.shared.restock;

import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.Supplier;
import hornbook.shared.store.Change;
import hornbook.shared.store.View;
import hornbook.shared.supply.Deliveries;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Lots and what the ledger says of their use, kept up: the books are read whole once, then only what the feed has since
 * added. What was reckoned for an article stays until its kind is touched or the day changes.
 */
final class Holdings {
    private final Map<String, String> itemOf = new HashMap<>();
    private final Map<String, Map<String, Lot>> lots = new LinkedHashMap<>();
    private final Ledger ledger = new Ledger();
    private final Map<String, Use> uses = new HashMap<>();
    private final Map<String, KindUse> kinds = new HashMap<>();
    private final Map<String, Deliveries> deliveries = new HashMap<>();
    private final Map<String, Point> points = new HashMap<>();
    private final Map<String, Forecast> forecasts = new HashMap<>();
    private final Set<String> quiet = new HashSet<>();
    private final Map<String, List<Article>> articles = new LinkedHashMap<>();
    private LocalDate today = LocalDate.MIN;
    private Keeping keeping = Keeping.USUAL;
    private long seen = -1;

    /** Takes in what the books hold by now. */
    void catchUp(View view) {
        if (seen < 0) {
            seen = view.feedEnd();
            view.each(Lot.class, this::put);
            view.each(Movement.class, movement -> ledger.add(movement, view));
            lots.keySet().forEach(this::group);
        } else {
            takeIn(view);
        }
        if (!today.equals(view.today())) {
            today = view.today();
            uses.clear();
            kinds.clear();
            forecasts.clear();
            quiet.clear();
        }
    }

    private void takeIn(View view) {
        Set<String> touched = new HashSet<>();
        for (Change change : view.feedAfter(seen)) {
            seen = change.seq();
            if (change.kind().equals("movement")) {
                view.find(Movement.class, change.id()).ifPresent(line -> {
                    ledger.add(line, view);
                    touched.add(line.lot());
                    if (deliveries.remove(line.supplier()) != null) {
                        quiet.clear();
                    }
                });
            } else if (change.kind().equals("supplier")) {
                deliveries.remove(change.id());
                quiet.clear();
            } else if (change.kind().equals("lot")) {
                touched.add(change.id());
            }
        }
        Set<String> items = new HashSet<>();
        touched.forEach(id -> reload(id, view, items));
        items.forEach(item -> {
            forget(item, touched);
            group(item);
            forget(item, touched);
        });
    }

    private void put(Lot lot) {
        itemOf.put(lot.id(), lot.item());
        lots.computeIfAbsent(lot.item(), item -> new LinkedHashMap<>()).put(lot.id(), lot);
    }

    private void reload(String id, View view, Set<String> items) {
        Optional<Lot> now = view.find(Lot.class, id);
        String before = itemOf.get(id);
        if (before != null) {
            items.add(before);
        }
        if (before != null && !now.map(Lot::item).equals(Optional.of(before))) {
            lots.getOrDefault(before, new HashMap<>()).remove(id);
            itemOf.remove(id);
        }
        now.ifPresent(this::put);
        now.map(Lot::item).ifPresent(items::add);
    }

    /** What was reckoned for the lots touched, and for those that borrow from them. */
    private void forget(String item, Set<String> touched) {
        kinds.remove(item);
        ofKind(item).forEach(article -> quiet.remove(article.key()));
        for (Article article : ofKind(item)) {
            boolean own = article.lots().stream().anyMatch(lot -> touched.contains(lot.id()));
            Use use = own ? uses.remove(article.key()) : uses.get(article.key());
            if (own || use == null || use.times() < Forecast.ENOUGH) {
                forecasts.remove(article.key());
            }
        }
    }

    private void group(String item) {
        articles.put(
                item, Article.of(List.copyOf(lots.getOrDefault(item, Map.of()).values())));
    }

    List<Article> articles() {
        return articles.values().stream().flatMap(List::stream).toList();
    }

    boolean has(String lot) {
        return itemOf.containsKey(lot);
    }

    List<Article> ofKind(String item) {
        return articles.getOrDefault(item, List.of());
    }

    Use use(Article article) {
        return uses.computeIfAbsent(article.key(), key -> article.use(ledger, today));
    }

    Forecast forecast(Article article) {
        return forecasts.computeIfAbsent(article.key(), key -> reckoned(article));
    }

    private Forecast reckoned(Article article) {
        String item = article.lot().item();
        KindUse kind = kinds.get(item);
        if (kind == null) {
            kind = new KindUse(ofKind(item).stream().map(this::use).toList());
            kinds.put(item, kind);
        }
        return Forecast.of(use(article), kind);
    }

    Deliveries deliveries(Supplier supplier) {
        return deliveries.computeIfAbsent(supplier.id(), id -> Deliveries.of(supplier, ledger.receipts(id)));
    }

    private record Point(Forecast forecast, Deliveries deliveries, double level, int reviewDays, int pieces) {}

    /** The reorder point, reckoned anew only where forecast, deliveries or keeping have changed. */
    int point(Article article, Forecast forecast, Deliveries from, Keeping by) {
        Point known = points.get(article.key());
        if (known == null || !known.equals(new Point(forecast, from, by.level(), by.reviewDays(), known.pieces()))) {
            int pieces = ReorderPoint.of(forecast, Wait.of(from, by.reviewDays()), by.level());
            known = new Point(forecast, from, by.level(), by.reviewDays(), pieces);
            points.put(article.key(), known);
        }
        return known.pieces();
    }

    /** Was there nothing to say of it, by itself, and has nothing changed since? */
    boolean quiet(Article article) {
        return quiet.contains(article.key());
    }

    void quieten(Article article) {
        quiet.add(article.key());
    }

    /** Another keeping: every point is another. */
    void at(Keeping asked) {
        if (!keeping.equals(asked)) {
            keeping = asked;
            quiet.clear();
        }
    }

    Ledger ledger() {
        return ledger;
    }

    LocalDate today() {
        return today;
    }
}
