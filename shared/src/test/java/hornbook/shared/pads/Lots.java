package hornbook.shared.pads;

import hornbook.shared.shop.Count;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.LotState;
import java.util.List;

/** Lots of pads made for a test. */
final class Lots {
    private Lots() {}

    static Lot pad(String id, int size, String thickness, int count) {
        return pad(
                id, "size=" + HalfSize.text(size) + ";thickness=" + thickness + " mm", new Count.Exact(count), "", "");
    }

    /** @param set {@code reserve}, {@code keepsake} or nothing */
    static Lot pad(String id, String dimensions, Count count, String set, String note) {
        return new Lot(
                id,
                "d-1",
                null,
                "sup-pad-single",
                "pad " + dimensions,
                List.of(),
                List.of(),
                dimensions,
                null,
                "leather on felt",
                "tan",
                LotState.NEW,
                count,
                set.equals("reserve"),
                set.equals("keepsake"),
                null,
                10,
                note);
    }
}
