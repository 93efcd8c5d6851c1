package hornbook.viewer.deed;

import hornbook.shared.store.Deed;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the strip shows at one moment.
 *
 * @param last what was done, or was asked about; null where nothing was
 * @param words what is said of it
 * @param trouble whether these words refuse something
 * @param earlier the last deeds, newest first
 */
record DeedView(@Nullable Deed last, String words, boolean trouble, List<Deed> earlier) {
    static final DeedView NOTHING = new DeedView(null, "", false, List.of());

    DeedView saying(String other, boolean isTrouble) {
        return new DeedView(last, other, isTrouble, earlier);
    }
}
