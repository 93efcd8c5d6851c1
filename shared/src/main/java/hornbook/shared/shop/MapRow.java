package hornbook.shared.shop;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** A key of a horn as measured on a job: what it turns on, its spring, its cup. All mm. */
public record MapRow(
        String id,
        String job,
        String horn,
        String key,
        @Nullable String cup,
        String turnsOn,
        String rod,
        @Nullable BigDecimal diameterMm,
        @Nullable BigDecimal lengthMm,
        @Nullable String thread,
        String drawsOut,
        String spring,
        @Nullable BigDecimal springMm,
        @Nullable BigDecimal springLengthMm,
        @Nullable BigDecimal cupInsideMm,
        @Nullable BigDecimal rimInsideMm,
        @Nullable BigDecimal rimOutsideMm,
        @Nullable BigDecimal resonatorMm)
        implements ShopRecord {}
