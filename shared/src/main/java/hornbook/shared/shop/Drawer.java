package hornbook.shared.shop;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A drawer: what its label says and what was found in it need not agree. */
public record Drawer(
        String id,
        String cabinet,
        int row,
        int column,
        String labelAsWritten,
        String writtenBy,
        String contentsAsFound,
        LabelState labelState,
        @Nullable LocalDate lastLookedThrough,
        String note)
        implements ShopRecord {}
