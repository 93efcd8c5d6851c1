package hornbook.shared.shop;

import org.jspecify.annotations.Nullable;

/** A place that is no drawer: hook, shelf, tube, or a parts horn with what is still on it. */
public record Place(
        String id,
        String name,
        String kind,
        String where,
        @Nullable String model,
        String note) implements ShopRecord {}
