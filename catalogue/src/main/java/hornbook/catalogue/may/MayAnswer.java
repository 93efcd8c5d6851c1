package hornbook.catalogue.may;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Whether it may be used.
 *
 * @param thing id of what was asked about
 * @param title its name
 * @param verdict the hardest of the grounds
 * @param why its reason
 * @param instead what to do, or use, instead
 * @param caution how the thing itself can hurt, and what decides
 * @param source where the reason comes from, and how sure it is
 * @param grounds every entry that holds, hardest first
 * @param lookFirst ids of traits that were not asked about and on which it would be stopped
 */
public record MayAnswer(
        String thing,
        String title,
        Allowed verdict,
        String why,
        @Nullable String instead,
        @Nullable String caution,
        @Nullable String source,
        List<Ground> grounds,
        List<String> lookFirst) {
    /** Keeps its own copies. */
    public MayAnswer {
        grounds = List.copyOf(grounds);
        lookFirst = List.copyOf(lookFirst);
    }
}
