package hornbook.indexer.fit;

import org.jspecify.annotations.Nullable;

/**
 * A tool to fetch.
 *
 * @param tool its id
 * @param member of the set, where one is wanted: {@code die 2-56 UNC}
 * @param drawer id of the drawer or place; missing where the shop's list has no such tool
 * @param label of the drawer as written, or the place's name
 * @param note what to mind of it
 */
public record ToolWanted(
        String tool,
        String title,
        @Nullable String member,
        @Nullable String drawer,
        @Nullable String label,
        @Nullable String note) {}
