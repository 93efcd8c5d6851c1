package hornbook.catalogue.entry;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A tool or kind of tool.
 *
 * @param serves ids of parts, quirks and faults it is wanted for
 * @param look how to know it when one sees it
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record Tool(
        String id,
        String title,
        List<String> otherNames,
        List<String> serves,
        Origin origin,
        @Nullable String look,
        @Nullable String caution,
        String source,
        String sureness)
        implements Thing {

    /** Keeps its own copies. */
    public Tool {
        otherNames = List.copyOf(otherNames);
        serves = List.copyOf(serves);
    }

    static Tool from(Fields in) {
        return new Tool(
                in.text("id"),
                in.text("title"),
                in.texts("other_names"),
                in.texts("serves"),
                in.word("origin", Origin.values()),
                in.optionalText("look"),
                in.optionalText("caution"),
                in.text("source"),
                in.text("sureness"));
    }
}
