package hornbook.shared.year;

import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.MovementKind;
import hornbook.shared.shop.Supplier;
import hornbook.shared.store.View;
import hornbook.shared.supply.Deliveries;
import hornbook.shared.year.YearAnswer.SupplierLine;
import hornbook.shared.year.YearAnswer.UsedLine;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What went out of the shelves and what came in, with what it cost. */
final class Stores {
    private static final String WAITED = "waited";

    private final List<Taken> taken = new ArrayList<>();
    private final List<Movement> received = new ArrayList<>();

    private Stores() {}

    /** Pieces used on a day; the price is that of the last delivery before, or none. */
    private record Taken(LocalDate day, String item, int pieces, BigDecimal price, boolean priced) {
        BigDecimal cost() {
            return price.multiply(BigDecimal.valueOf(pieces));
        }
    }

    /** Reads the ledger once, in the order in which it was written. */
    static Stores of(View view, Period in) {
        Stores stores = new Stores();
        Map<String, String> items = new HashMap<>();
        view.each(Lot.class, lot -> items.put(lot.id(), lot.item()));
        Map<String, TreeMap<LocalDate, BigDecimal>> prices = new HashMap<>();
        List<Movement> used = new ArrayList<>();
        Set<String> takenBack = new HashSet<>();
        view.each(Movement.class, m -> {
            m.takesBack().ifPresent(takenBack::add);
            if (m.unitPrice() != null) {
                prices.computeIfAbsent(m.lot(), lot -> new TreeMap<>()).put(m.date(), m.unitPrice());
            }
            if (in.holds(m.date()) && m.kind() == MovementKind.RECEIPT) {
                stores.received.add(m);
            } else if (in.holds(m.date()) && m.kind() == MovementKind.USE) {
                used.add(m);
            }
        });
        stores.received.removeIf(m -> takenBack.contains(m.id()));
        used.removeIf(m -> takenBack.contains(m.id()));
        used.forEach(m -> {
            Map.Entry<LocalDate, BigDecimal> paid =
                    prices.getOrDefault(m.lot(), new TreeMap<>()).floorEntry(m.date());
            stores.taken.add(new Taken(
                    m.date(),
                    items.getOrDefault(m.lot(), m.lot()),
                    -m.qty(),
                    paid == null ? BigDecimal.ZERO : paid.getValue(),
                    paid != null));
        });
        return stores;
    }

    int pieces(Predicate<LocalDate> on) {
        return taken.stream()
                .filter(t -> on.test(t.day()))
                .mapToInt(Taken::pieces)
                .sum();
    }

    int unpriced() {
        return taken.stream().filter(t -> !t.priced()).mapToInt(Taken::pieces).sum();
    }

    BigDecimal usedCost() {
        return cost(taken);
    }

    private static BigDecimal cost(List<Taken> some) {
        return some.stream().map(Taken::cost).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    List<UsedLine> used() {
        return taken.stream().collect(Collectors.groupingBy(Taken::item)).entrySet().stream()
                .map(item -> line(item.getKey(), item.getValue()))
                .filter(line -> line.pieces() != 0)
                .sorted(Comparator.comparing((UsedLine line) -> line.cost() == null ? BigDecimal.ZERO : line.cost())
                        .thenComparing(UsedLine::pieces)
                        .reversed()
                        .thenComparing(UsedLine::item))
                .toList();
    }

    private static UsedLine line(String item, List<Taken> taken) {
        boolean priced = taken.stream().anyMatch(Taken::priced);
        return new UsedLine(
                item,
                taken.stream().mapToInt(Taken::pieces).sum(),
                priced ? cost(taken) : null,
                taken.stream().filter(t -> !t.priced()).mapToInt(Taken::pieces).sum());
    }

    BigDecimal spent() {
        return spent(received);
    }

    BigDecimal spent(Predicate<LocalDate> on) {
        return spent(received.stream().filter(m -> on.test(m.date())).toList());
    }

    private static BigDecimal spent(List<Movement> receipts) {
        return receipts.stream()
                .filter(m -> m.unitPrice() != null)
                .map(m -> m.unitPrice().multiply(BigDecimal.valueOf(m.qty())))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    List<SupplierLine> suppliers(View view) {
        return view.all(Supplier.class).stream()
                .filter(s -> received.stream().anyMatch(m -> s.id().equals(m.supplier())))
                .map(this::line)
                .sorted(Comparator.comparing((SupplierLine s) -> s.typicalDays() == null ? -1 : s.typicalDays())
                        .reversed()
                        .thenComparing(SupplierLine::name))
                .toList();
    }

    private SupplierLine line(Supplier supplier) {
        List<Movement> from = received.stream()
                .filter(m -> supplier.id().equals(m.supplier()))
                .toList();
        Deliveries deliveries = Deliveries.recorded(from);
        return new SupplierLine(
                supplier.id(),
                supplier.name(),
                deliveries.days().size(),
                deliveries.typical().orElse(null),
                deliveries.days().isEmpty() ? null : deliveries.days().getLast(),
                (int) from.stream()
                        .filter(m -> m.note().contains(WAITED))
                        .map(m -> m.orderRef() == null ? m.id() : m.orderRef())
                        .distinct()
                        .count(),
                spent(from));
    }
}
