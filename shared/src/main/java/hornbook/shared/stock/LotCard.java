package hornbook.shared.stock;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A lot with where it lies and its last ledger lines, newest first.
 *
 * @param drawer id of the drawer or place
 * @param drawerLabel the drawer's label as written, or the place's name
 * @param count a number, or few, some or plenty
 * @param heed why not to take from it
 */
public record LotCard(
        String id,
        String title,
        String item,
        String drawer,
        String drawerLabel,
        String where,
        String count,
        String dimensions,
        @Nullable String thread,
        String material,
        String colour,
        String state,
        List<String> fitsMakes,
        List<String> fitsModels,
        @Nullable String heed,
        @Nullable String supplier,
        @Nullable Integer pack,
        String note,
        List<Line> ledger) {

    /** A line of the ledger. */
    public record Line(
            LocalDate day, String kind, int qty, @Nullable String job, String note) {}
}
