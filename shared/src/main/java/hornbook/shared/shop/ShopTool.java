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
        implements ShopRecord {}
