package hornbook.shared.restock;

import hornbook.shared.shop.Lot;
import hornbook.shared.shop.OpenOrder;
import hornbook.shared.shop.Supplier;
import hornbook.shared.store.View;
import hornbook.shared.supply.Deliveries;
import hornbook.shared.supply.Verdicts;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** One going through all articles. */
final class Round {
    private static final Comparator<RestockLine> PRESSING = Comparator.comparing(
                    (RestockLine line) -> line.order() == 0)
            .thenComparing(line -> line.onHand() > 0)
            .thenComparing(line -> line.onHand() - line.wanted() + line.onOrder() - line.reorderPoint());

    private final Holdings holdings;
    private final RestockQuestion question;
    private final Keeping keeping;
    private final Verdicts verdicts;
    private final Map<String, List<OpenOrder>> orders;
    private final Map<String, List<Wanted>> wanted;
    private final List<Supplier> suppliers;

    Round(View view, Holdings holdings, RestockQuestion question, Keeping keeping) {
        this.holdings = holdings;
        this.question = question;
        this.keeping = keeping;
        this.orders = view.all(OpenOrder.class).stream().collect(Collectors.groupingBy(OpenOrder::lot));
        this.wanted = new HashMap<>();
        question.wanted().forEach(want -> {
            if (want.lot() != null) {
                wanted.computeIfAbsent(want.lot(), lot -> new ArrayList<>()).add(want);
            }
        });
        this.suppliers = view.all(Supplier.class);
        this.verdicts = new Verdicts(suppliers);
        holdings.at(keeping);
        Demand.check(question.wanted(), holdings);
    }

    RestockAnswer answer() {
        List<RestockLine> lines = new ArrayList<>();
        List<String> remarks = new ArrayList<>();
        for (Article article : holdings.articles()) {
            boolean asked = article.lots().stream()
                    .anyMatch(lot -> wanted.containsKey(lot.id()) || orders.containsKey(lot.id()));
            if (asked || !holdings.quiet(article)) {
                consider(article, asked, lines, remarks);
            }
        }
        question.wanted().stream().filter(w -> w.lot() == null).forEach(w -> lines.add(withoutLot(w)));
        lines.sort(PRESSING);
        if (!holdings.ledger().used()) {
            remarks.add(
                    "no use is on record yet: nothing can be foreseen; what goes out is seen once it is written down");
        }
        return new RestockAnswer(List.copyOf(lines), List.copyOf(remarks));
    }

    private void consider(Article article, boolean asked, List<RestockLine> lines, List<String> remarks) {
        List<Lot> below = article.lots().stream()
                .filter(lot -> Article.least(lot.count()) < 0)
                .toList();
        below.forEach(lot -> remarks.add(negative(lot)));
        Optional<RestockLine> line = line(article, !below.isEmpty());
        line.ifPresent(lines::add);
        if (line.isEmpty() && below.isEmpty() && !asked) {
            holdings.quieten(article);
        }
    }

    private static String negative(Lot lot) {
        return lot.id() + " (" + lot.title() + "): its ledger says "
                + lot.count().written() + ", which cannot be: count it with “hornbook stock count " + lot.id() + " N”";
    }

    /** @param below does the ledger count one of its lots under nought? */
    private Optional<RestockLine> line(Article article, boolean below) {
        Use use = holdings.use(article);
        Demand demand = Demand.of(article, wanted, orders);
        boolean idle = use.times() == 0 && demand.wanted().isEmpty() && !below;
        if (idle || article.onlyReserve() || replaced(article)) {
            return Optional.empty();
        }
        Source source = source(verdicts.supplier(article.lot()), verdicts.avoid(article.lot()));
        Forecast forecast = holdings.forecast(article);
        boolean used = use.times() > 0;
        int point = used ? holdings.point(article, forecast, source.deliveries(), keeping) : 0;
        int onHand = article.onHand(verdicts);
        int pack = Optional.ofNullable(article.lot().pack()).filter(p -> p > 0).orElse(1);
        OrderSize size = OrderSize.of(forecast, keeping, article.lastPrice(holdings.ledger()));
        Need need = Need.of(Math.max(0, onHand) - demand.pieces(), demand.onOrder(), point, size, pack, used);
        boolean emptied = onHand <= 0 && used;
        return need.due() || emptied || below
                ? Optional.of(line(new Standing(article, use, forecast, demand, source, need, onHand)))
                : Optional.empty();
    }

    /** Goods to avoid that the shop also has from elsewhere: nobody misses them. */
    private boolean replaced(Article article) {
        Lot lot = article.lot();
        return verdicts.avoided(lot)
                && holdings.ofKind(lot.item()).stream()
                        .map(Article::lot)
                        .anyMatch(other -> !verdicts.avoided(other)
                                && other.supplier() != null
                                && other.dimensions().equals(lot.dimensions()));
    }

    private RestockLine line(Standing standing) {
        Lot lot = standing.article().lot();
        Advice advice = Advice.of(standing, verdicts);
        List<String> remarks = new ArrayList<>(standing.source().remarks());
        remarks.addAll(keeps(standing, advice.order()));
        return new RestockLine(
                lot.id(),
                lot.lies(),
                lot.title(),
                standing.source().supplier().map(Supplier::id).orElse(null),
                standing.source().supplier().map(Supplier::name).orElse(null),
                standing.onHand(),
                standing.article().byEye().orElse(null),
                standing.demand().onOrder(),
                standing.demand().pieces(),
                standing.need().point(),
                advice.order(),
                standing.need().pack(),
                standing.source().deliveries().typical().orElse(null),
                advice.why(),
                List.copyOf(remarks),
                Arrays.stream(standing.use().months()).boxed().toList(),
                standing.use().last());
    }

    private List<String> keeps(Standing standing, int order) {
        List<String> remarks = new ArrayList<>();
        Integer months = question.keepsMonths().get(standing.article().lot().item());
        if (months == null) {
            return remarks;
        }
        standing.article().lots().stream()
                .filter(lot -> !lot.count().none())
                .forEach(lot -> holdings.ledger()
                        .lot(lot.id())
                        .flatMap(LotLedger::lastBought)
                        .filter(day -> day.plusMonths(months).isBefore(holdings.today()))
                        .ifPresent(day -> remarks.add("what is left in %s was bought on %s and keeps %d months: test it"
                                .formatted(lot.id(), day, months))));
        double used = standing.forecast().perMonth() * months;
        if (order > 1 && used < order) {
            remarks.add("it keeps %d months, in which about %d are used: ask for a smaller pack"
                    .formatted(months, Math.round(used)));
        }
        return remarks;
    }

    private RestockLine withoutLot(Wanted want) {
        Optional<Supplier> supplier =
                suppliers.stream().filter(s -> s.id().equals(want.supplier())).findFirst();
        Source source = source(supplier, Optional.empty());
        String why = "the shop keeps none and %s wants %d; %s: order %d"
                .formatted(want.job() == null ? "a job" : want.job(), want.pieces(), source.days(), want.pieces());
        return new RestockLine(
                null,
                null,
                want.what(),
                supplier.map(Supplier::id).orElse(null),
                supplier.map(Supplier::name).orElse(null),
                0,
                null,
                0,
                want.pieces(),
                0,
                want.pieces(),
                1,
                source.deliveries().typical().orElse(null),
                why,
                source.remarks(),
                List.of(),
                null);
    }

    private Source source(Optional<Supplier> supplier, Optional<String> avoid) {
        return new Source(supplier, supplier.map(holdings::deliveries).orElse(new Deliveries(List.of())), avoid);
    }
}
