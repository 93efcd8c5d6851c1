package hornbook.shared.supply;

import hornbook.shared.shop.Movement;
import hornbook.shared.shop.MovementKind;
import hornbook.shared.shop.Supplier;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** How long a supplier took, order to arrival, for each delivery on record: days, shortest first. */
public record Deliveries(List<Integer> days) {
    /** Fewer deliveries say little of how late the next may be. */
    public static final int ENOUGH = 3;

    public Deliveries {
        days = days.stream().sorted().toList();
    }

    /**
     * The deliveries of a supplier: those of the ledger, each order once however many lots came with it; where the
     * ledger has fewer than three, the days written down with the supplier if those are more.
     *
     * @param receipts ledger lines of this supplier; others than dated receipts are passed over
     */
    public static Deliveries of(Supplier supplier, Collection<Movement> receipts) {
        List<Integer> ledger = recorded(receipts.stream()
                        .filter(m -> m.kind() == MovementKind.RECEIPT
                                && supplier.id().equals(m.supplier()))
                        .toList())
                .days();
        List<Integer> written = written(supplier.leadDaysObserved());
        return new Deliveries(ledger.size() < ENOUGH && written.size() > ledger.size() ? written : ledger);
    }

    /** Those of some receipts alone, each order once however many lots came with it. */
    public static Deliveries recorded(Collection<Movement> receipts) {
        return new Deliveries(receipts.stream()
                .flatMap(m -> Arrival.of(m).stream())
                .distinct()
                .map(Arrival::days)
                .toList());
    }

    private record Arrival(String order, int days) {
        static Optional<Arrival> of(Movement receipt) {
            if (receipt.orderedOn() == null || receipt.orderedOn().isAfter(receipt.date())) {
                return Optional.empty();
            }
            String order =
                    receipt.orderRef() != null ? receipt.orderRef() : receipt.orderedOn() + " to " + receipt.date();
            return Optional.of(new Arrival(order, (int) ChronoUnit.DAYS.between(receipt.orderedOn(), receipt.date())));
        }
    }

    /** What is no whole number of days is passed over: the column is written by hand. */
    private static List<Integer> written(String text) {
        return Arrays.stream(text.split("[ ,;]+"))
                .filter(word -> word.matches("\\d{1,4}"))
                .map(Integer::valueOf)
                .toList();
    }

    /** The middle one; of two in the middle the later. Nothing where no delivery is on record. */
    public Optional<Integer> typical() {
        return days.isEmpty() ? Optional.empty() : Optional.of(days.get(days.size() / 2));
    }

    public boolean enough() {
        return days.size() >= ENOUGH;
    }
}
