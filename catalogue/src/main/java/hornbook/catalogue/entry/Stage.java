package hornbook.catalogue.entry;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of a job.
 *
 * @param order in tens, so that a shop can put its own between
 * @param recorded what is written down
 * @param whyHere why it stands where it stands
 * @param marks what may be marked or taken off
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record Stage(
        String id,
        String title,
        int order,
        List<String> recorded,
        String whyHere,
        @Nullable String marks,
        String source,
        String sureness)
        implements Entry {

    /** Keeps its own copies. */
    public Stage {
        recorded = List.copyOf(recorded);
    }

    static Stage from(Fields in) {
        return new Stage(
                in.text("id"),
                in.text("title"),
                in.whole("order"),
                in.texts("recorded"),
                in.text("why_here"),
                in.optionalText("marks"),
                in.text("source"),
                in.text("sureness"));
    }
}
