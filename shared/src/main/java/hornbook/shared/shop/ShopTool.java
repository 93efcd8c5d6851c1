package hornbook.shared.shop;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A tool of this shop; {@code errorMm} is what the gauge reads less what is true, mm, as written. */
public record ShopTool(
        String id,
        String title,
        @Nullable String drawer,
        @Nullable String place,
        String serves,
        String state,
        String errorMm,
        @Nullable LocalDate errorChecked,
        String errorNote,
        String note)
        implements ShopRecord {
    /** The same tool elsewhere: in a drawer, or at a place. */
    public ShopTool lyingIn(@Nullable String otherDrawer, @Nullable String otherPlace) {
        return new ShopTool(id, title, otherDrawer, otherPlace, serves, state, errorMm, errorChecked, errorNote, note);
    }

    /** The same tool, checked on that day. */
    public ShopTool reading(String error, LocalDate checked, String how) {
        return new ShopTool(id, title, drawer, place, serves, state, error, checked, how, note);
    }
}
