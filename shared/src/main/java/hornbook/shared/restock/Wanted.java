package hornbook.shared.restock;

import org.jspecify.annotations.Nullable;

/**
 * Known demand: what a taken-in or booked job wants, served from stock before anything else.
 *
 * @param lot the lot it would come from, null where the shop has none
 * @param what as it would be written on an order
 * @param supplier who sells it, for goods the shop has no lot of
 */
public record Wanted(
        @Nullable String lot,
        String what,
        @Nullable String supplier,
        int pieces,
        @Nullable String job) {}
