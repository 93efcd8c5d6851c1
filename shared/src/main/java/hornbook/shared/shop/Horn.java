package hornbook.shared.shop;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A horn that was in the shop. {@code model} is an entry's id or {@code unlisted}. */
public record Horn(
        String id,
        String model,
        @Nullable String make,
        String instrument,
        String serial,
        @Nullable String soldAs,
        @Nullable Integer yearAbout,
        @Nullable String ownerCode,
        @Nullable LocalDate firstSeen,
        String identifiedBy,
        String sureness,
        String note)
        implements ShopRecord {}
