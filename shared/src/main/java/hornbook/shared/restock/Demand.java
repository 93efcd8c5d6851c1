package hornbook.shared.restock;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.OpenOrder;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/** What is wanted of an article now, and what of it is on its way. */
record Demand(List<Wanted> wanted, List<OpenOrder> orders) {

    static Demand of(Article article, Map<String, List<Wanted>> wanted, Map<String, List<OpenOrder>> orders) {
        return new Demand(each(article, wanted), each(article, orders));
    }

    private static <T> List<T> each(Article article, Map<String, List<T>> byLot) {
        return article.lots().stream()
                .flatMap(lot -> byLot.getOrDefault(lot.id(), List.of()).stream())
                .toList();
    }

    /** @throws BadInput naming what cannot be meant */
    static void check(List<Wanted> wanted, Holdings holdings) {
        for (Wanted want : wanted) {
            if (want.lot() != null && !holdings.has(want.lot())) {
                throw new BadInput("%s, wanted by %s, is not in the books: correct the number or leave it out"
                        .formatted(want.lot(), want.job() == null ? "nobody named" : want.job()));
            }
            if (want.pieces() < 1) {
                throw new BadInput("%d of %s are wanted: write one or more".formatted(want.pieces(), want.what()));
            }
        }
    }

    int pieces() {
        return wanted.stream().mapToInt(Wanted::pieces).sum();
    }

    int onOrder() {
        return orders.stream().mapToInt(OpenOrder::qty).sum();
    }

    String jobs() {
        return wanted.stream()
                .map(Wanted::job)
                .filter(Objects::nonNull)
                .distinct()
                .collect(Collectors.joining(", "));
    }
}
