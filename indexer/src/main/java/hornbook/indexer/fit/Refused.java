package hornbook.indexer.fit;

import org.jspecify.annotations.Nullable;

/**
 * A lot that will not do.
 *
 * @param reason one word for it
 * @param why in words, with the figures
 */
public record Refused(
        String lot,
        String title,
        @Nullable String drawer,
        @Nullable String label,
        Reason reason,
        String why) {
    /** Why a lot is refused. */
    public enum Reason {
        KEEPSAKE,
        RESERVE,
        NONE_LEFT,
        TOO_FEW,
        HAZARD,
        DIFFERS,
        TOO_SMALL,
        TOO_LARGE,
        OVER_LIMIT,
        NOT_ALLOWED,
        NOT_WRITTEN,
        LACKS_TOOL,
        NO_WAY
    }
}
