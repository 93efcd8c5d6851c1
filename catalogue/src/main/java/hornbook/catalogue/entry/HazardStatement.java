package hornbook.catalogue.entry;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A GHS hazard class and category with its codes.
 *
 * @param title class and category
 * @param codes H codes
 * @param pictogram GHS code
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record HazardStatement(
        String id,
        String title,
        List<String> codes,
        @Nullable String pictogram,
        @Nullable String signalWord,
        String source,
        String sureness)
        implements Entry {

    /** Keeps its own copies. */
    public HazardStatement {
        codes = List.copyOf(codes);
    }

    static HazardStatement from(Fields in) {
        return new HazardStatement(
                in.text("id"),
                in.text("title"),
                in.texts("codes"),
                in.optionalText("pictogram"),
                in.optionalText("signal_word"),
                in.text("source"),
                in.text("sureness"));
    }
}
