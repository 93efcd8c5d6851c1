package hornbook.shared.shop;

import org.jspecify.annotations.Nullable;

/** A horn to try identification on: what was seen, and the truth. */
public record TrialHorn(
        String id,
        int looks,
        String observations,
        String serial,
        String truth,
        @Nullable Integer yearTruth) implements ShopRecord {}
