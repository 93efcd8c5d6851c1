package hornbook.indexer.search;

import org.jspecify.annotations.Nullable;

/**
 * One thing found.
 *
 * @param drawer id of the drawer or place where it lies, or which it is
 * @param drawerLabel the drawer's label as written, or the place's name
 * @param where piece of furniture and spot in it
 * @param onHand count as written: a number, or few, some, plenty
 * @param score above 0; only hits of one answer can be compared
 * @param why in words
 */
public record Hit(
        String kind,
        String id,
        String title,
        @Nullable String drawer,
        @Nullable String drawerLabel,
        @Nullable String where,
        @Nullable String onHand,
        double score,
        String why) {}
