package hornbook.shared.stock;

import hornbook.shared.shop.Lot;
import org.jspecify.annotations.Nullable;

/**
 * A lot as it stands in the list of a drawer.
 *
 * @param kind id of the kind of part or supply; absent where it is not known
 * @param supplier where it is bought
 * @param pack how many are sold together; absent where singly
 * @param count a number, or few, some or plenty
 * @param heed why not to take from it: reserve, keepsake, or that nobody knows what it is
 */
public record LotLine(
        String id,
        String title,
        @Nullable String kind,
        String dimensions,
        @Nullable String thread,
        String count,
        String state,
        @Nullable String supplier,
        @Nullable Integer pack,
        @Nullable String heed) {
    private static final String UNKNOWN = "not yet known: gauge a few and sort them out";

    /** A grab bag, or pieces that nobody has gauged. */
    public boolean notYetKnown() {
        return UNKNOWN.equals(heed);
    }

    static LotLine of(Lot lot) {
        return new LotLine(
                lot.id(),
                lot.title(),
                lot.item().isEmpty() ? null : lot.item(),
                lot.dimensions(),
                lot.thread(),
                lot.count().written(),
                lot.state().name().toLowerCase(java.util.Locale.ROOT),
                lot.supplier(),
                lot.pack(),
                heed(lot));
    }

    static @Nullable String heed(Lot lot) {
        if (lot.keepsake()) {
            return "keepsake: measure it, copy it, never use it";
        }
        if (lot.reserve()) {
            return "reserve: only on asking";
        }
        return lot.notYetKnown() ? UNKNOWN : null;
    }
}
