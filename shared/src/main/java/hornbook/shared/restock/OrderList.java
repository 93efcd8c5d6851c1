package hornbook.shared.restock;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What to send to one supplier.
 *
 * @param lines only those with something to order
 * @param total at the last prices paid, absent where one is not known
 * @param heed where the total is under the supplier's smallest order
 */
public record OrderList(
        @Nullable String supplier,
        String name,
        List<RestockLine> lines,
        @Nullable BigDecimal total,
        @Nullable String heed) {
    /** Columns of {@link #rows()}. */
    public static final List<String> COLUMNS =
            List.of("supplier", "lot", "what", "order", "pack", "on_hand", "reorder_point", "why");

    /** As cells of a CSV file. */
    public List<List<String>> rows() {
        return lines.stream()
                .map(line -> List.of(
                        name,
                        line.lot() == null ? "" : line.lot(),
                        line.what(),
                        String.valueOf(line.order()),
                        String.valueOf(line.pack()),
                        String.valueOf(line.onHand()),
                        String.valueOf(line.reorderPoint()),
                        line.why()))
                .toList();
    }

    /**
     * One list a supplier, by name; what has no supplier comes last.
     *
     * @param prices last paid a piece, by lot
     * @param smallest order that a supplier takes, money
     */
    static List<OrderList> of(List<RestockLine> all, Map<String, BigDecimal> prices, Map<String, BigDecimal> smallest) {
        Map<String, List<RestockLine>> bySupplier = new TreeMap<>();
        all.stream()
                .filter(line -> line.order() > 0)
                .forEach(line -> bySupplier
                        .computeIfAbsent(
                                line.supplierName() == null ? "\uFFFF" : line.supplierName(),
                                n -> new java.util.ArrayList<>())
                        .add(line));
        return bySupplier.values().stream()
                .map(lines -> one(lines, prices, smallest))
                .toList();
    }

    private static OrderList one(
            List<RestockLine> lines, Map<String, BigDecimal> prices, Map<String, BigDecimal> smallest) {
        RestockLine first = lines.getFirst();
        BigDecimal total = BigDecimal.ZERO;
        for (RestockLine line : lines) {
            BigDecimal price = line.lot() == null ? null : prices.get(line.lot());
            total = total == null || price == null ? null : total.add(price.multiply(BigDecimal.valueOf(line.order())));
        }
        String name = first.supplierName() == null ? "no supplier known" : first.supplierName();
        BigDecimal least = first.supplier() == null ? null : smallest.get(first.supplier());
        String heed = least == null || total == null || total.compareTo(least) >= 0
                ? null
                : "comes to %s, under the smallest order of %s: add %s"
                        .formatted(
                                total.toPlainString(),
                                least.toPlainString(),
                                least.subtract(total).toPlainString());
        return new OrderList(first.supplier(), name, List.copyOf(lines), total, heed);
    }
}
