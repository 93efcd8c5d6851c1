package hornbook.indexer.brief;

import org.jspecify.annotations.Nullable;

/**
 * Something that may not be used on this horn.
 *
 * @param use id of a supply, tool or operation, or a {@code process-} word
 * @param on trait and value that forbid it
 * @param possible true where that value is under nine in ten
 */
public record MayNot(
        String use,
        String title,
        String on,
        boolean possible,
        String why,
        @Nullable String instead) {}
