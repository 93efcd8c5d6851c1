package hornbook.catalogue.entry;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A kind of part.
 *
 * @param dimensions dimensions that matter, with their unit
 * @param mustMatch what may not be wrong
 * @param mayBeWorked which way each dimension can go
 * @param fit how it is asked for and worked
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record Part(
        String id,
        String title,
        List<String> otherNames,
        List<String> dimensions,
        @Nullable String typicalRange,
        @Nullable String material,
        List<String> mustMatch,
        List<String> mayBeWorked,
        @Nullable String salvageValue,
        @Nullable String notes,
        @Nullable Fitting fit,
        String source,
        String sureness)
        implements Thing {

    /** Keeps its own copies. */
    public Part {
        otherNames = List.copyOf(otherNames);
        dimensions = List.copyOf(dimensions);
        mustMatch = List.copyOf(mustMatch);
        mayBeWorked = List.copyOf(mayBeWorked);
    }

    static Part from(Fields in) {
        return new Part(
                in.text("id"),
                in.text("title"),
                in.texts("other_names"),
                in.texts("dimensions"),
                in.optionalText("typical_range"),
                in.optionalText("material"),
                in.texts("must_match"),
                in.texts("may_be_worked"),
                in.optionalText("salvage_value"),
                in.optionalText("notes"),
                in.optional("fit", Fitting::from),
                in.text("source"),
                in.text("sureness"));
    }
}
