package hornbook.shared.shop;

import org.jspecify.annotations.Nullable;

/** A part or supply that went into a job, with the ledger line that took it out. */
public record PartUsed(
        String id,
        String job,
        String lot,
        int qty,
        @Nullable String movement,
        String whatFor) implements ShopRecord {}
