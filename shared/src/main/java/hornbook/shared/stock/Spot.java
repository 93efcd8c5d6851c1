package hornbook.shared.stock;

import org.jspecify.annotations.Nullable;

/**
 * Where something is put: a drawer, or another place.
 *
 * @param drawer null where it is a place
 * @param place null where it is a drawer
 */
record Spot(String id, @Nullable String drawer, @Nullable String place) {}
