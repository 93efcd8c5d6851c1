package hornbook.shared.pads;

import hornbook.shared.shop.Count;
import hornbook.shared.shop.Lot;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The lots of one batch: same item, material, colour and thickness, a size or more. */
final class Tray {
    /** What sets batches apart. */
    record Batch(
            String item,
            String material,
            String colour,
            @Nullable BigDecimal thickness) {
        /** What the owner sees: one look a horn. */
        String look() {
            return item + "\n" + material + "\n" + colour;
        }

        String named(String word) {
            String words = String.join(", ", word, colour.isEmpty() ? material : colour);
            return thickness == null ? words : words + ", " + thickness.toPlainString() + " mm thick";
        }
    }

    final Batch batch;
    final String look;
    private final Map<Integer, List<Lot>> lots = new HashMap<>();
    private final Map<Integer, List<Lot>> open = new HashMap<>();
    private final int[] stock = new int[HalfSize.MOST + 1];

    Tray(Batch batch) {
        this.batch = batch;
        this.look = batch.look();
    }

    /** @param free may be taken from; if not, the lot only says what is bought in this size */
    void add(int size, Lot lot, boolean free) {
        lots.computeIfAbsent(size, s -> new ArrayList<>()).add(lot);
        if (free) {
            open.computeIfAbsent(size, s -> new ArrayList<>()).add(lot);
            stock[size] += surely(lot.count());
        }
    }

    /** Is there a lot to take from, empty or not? Stock that only a reserve holds is no batch to work from. */
    boolean counted() {
        return !open.isEmpty();
    }

    /** How many are surely there: of a count by eye the least that the word means. */
    static int surely(Count count) {
        return switch (count) {
            case Count.Exact(int pieces) -> Math.max(0, pieces);
            case Count.Rough rough ->
                switch (rough) {
                    case FEW -> 1;
                    case SOME -> 6;
                    case PLENTY -> 21;
                };
        };
    }

    int[] stock() {
        return stock;
    }

    boolean reaches(int ruled) {
        for (int size = Math.max(0, ruled - 1); size <= Math.min(ruled + 1, HalfSize.MOST); size++) {
            if (stock[size] > 0) {
                return true;
            }
        }
        return false;
    }

    /** The lots of a size that may be taken from, counted ones first. */
    List<Lot> toTake(int size) {
        return open.getOrDefault(size, List.of()).stream()
                .sorted(Comparator.comparing((Lot lot) -> lot.count() instanceof Count.Rough))
                .toList();
    }

    /** The lot to order for a size. */
    Optional<Lot> lot(int size) {
        return lots.getOrDefault(size, List.of()).stream().findFirst();
    }

    /** A lot in reserve that holds the size. */
    Optional<Lot> reserve(int size) {
        return lots.getOrDefault(size, List.of()).stream()
                .filter(lot -> !toTake(size).contains(lot) && surely(lot.count()) > 0)
                .findFirst();
    }
}
