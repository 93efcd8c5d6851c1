package hornbook.catalogue.entry;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * May this be used on that?
 *
 * @param use id of a supply, tool or operation, or a `process-` word
 * @param trait id of the trait that says on what
 * @param values of that trait
 * @param instead what to do, or use, instead
 * @param see id of the quirk
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record UseOn(
        String id,
        String title,
        String use,
        String trait,
        List<String> values,
        Verdict verdict,
        String why,
        @Nullable String instead,
        @Nullable String see,
        String source,
        String sureness)
        implements Entry {

    /** Keeps its own copies. */
    public UseOn {
        values = List.copyOf(values);
    }

    static UseOn from(Fields in) {
        return new UseOn(
                in.text("id"),
                in.text("title"),
                in.text("use"),
                in.text("trait"),
                in.texts("values"),
                in.word("verdict", Verdict.values()),
                in.text("why"),
                in.optionalText("instead"),
                in.optionalText("see"),
                in.text("source"),
                in.text("sureness"));
    }
}
