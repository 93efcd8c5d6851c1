package hornbook.catalogue.entry;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A maker's name.
 *
 * @param title the name
 * @param otherNames other names it went by
 * @param years when it made horns
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record Make(
        String id,
        String title,
        List<String> otherNames,
        @Nullable String place,
        @Nullable Years years,
        @Nullable String notes,
        String source,
        String sureness)
        implements Entry {

    /** Keeps its own copies. */
    public Make {
        otherNames = List.copyOf(otherNames);
    }

    static Make from(Fields in) {
        return new Make(
                in.text("id"),
                in.text("title"),
                in.texts("other_names"),
                in.optionalText("place"),
                in.optional("years", Years::from),
                in.optionalText("notes"),
                in.text("source"),
                in.text("sureness"));
    }
}
