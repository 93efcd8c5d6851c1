package hornbook.shared.shop;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Like parts, or a supply, in one place. Lies in a drawer or at a place, never both. */
public record Lot(
        String id,
        @Nullable String drawer,
        @Nullable String place,
        String item,
        String title,
        List<String> fitsMakes,
        List<String> fitsModels,
        String dimensions,
        @Nullable String thread,
        String material,
        String colour,
        LotState state,
        Count count,
        boolean reserve,
        boolean keepsake,
        @Nullable String supplier,
        @Nullable Integer pack,
        String note)
        implements ShopRecord {
    public Lot {
        if ((drawer == null) == (place == null)) {
            throw new BadInput("lot " + id + ": drawer or place must be given, and not both");
        }
    }

    /** Where it lies: the id of a drawer or of a place. */
    public String lies() {
        return drawer != null ? drawer : java.util.Objects.requireNonNull(place);
    }
}
