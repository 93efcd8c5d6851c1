package hornbook.shared.shop;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** A pad that went into a cup, mm. */
public record PadUsed(
        String id,
        String job,
        String horn,
        String cup,
        @Nullable BigDecimal measuredMm,
        BigDecimal sizeMm,
        @Nullable BigDecimal thicknessMm,
        @Nullable String lot,
        @Nullable String movement,
        String note)
        implements ShopRecord {}
