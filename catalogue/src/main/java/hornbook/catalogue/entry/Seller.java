package hornbook.catalogue.entry;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A name engraved by somebody who did not make the horn.
 *
 * @param title the name as engraved
 * @param madeBy who made what was sold under it, and how often
 * @param years when it was used
 * @param howKnown in words
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record Seller(
        String id,
        String title,
        List<MadeBy> madeBy,
        @Nullable Years years,
        @Nullable String howKnown,
        String source,
        String sureness)
        implements Entry {

    /** Keeps its own copies. */
    public Seller {
        madeBy = List.copyOf(madeBy);
    }

    static Seller from(Fields in) {
        return new Seller(
                in.text("id"),
                in.text("title"),
                in.list("made_by", MadeBy::from),
                in.optional("years", Years::from),
                in.optionalText("how_known"),
                in.text("source"),
                in.text("sureness"));
    }
}
