package hornbook.catalogue.entry;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A substance or process that can hurt, and what to do.
 *
 * @param title substance, family or process
 * @param cas registry number
 * @param classes hazard classes (UN GHS)
 * @param statements hazard statement codes
 * @param pictograms GHS codes
 * @param text what to wear and do; the safety data sheet decides
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record Caution(
        String id,
        String title,
        @Nullable String cas,
        List<String> classes,
        List<String> statements,
        List<String> pictograms,
        @Nullable String signalWord,
        String text,
        String source,
        String sureness)
        implements Entry {

    /** Keeps its own copies. */
    public Caution {
        classes = List.copyOf(classes);
        statements = List.copyOf(statements);
        pictograms = List.copyOf(pictograms);
    }

    static Caution from(Fields in) {
        return new Caution(
                in.text("id"),
                in.text("title"),
                in.optionalText("cas"),
                in.texts("classes"),
                in.texts("statements"),
                in.texts("pictograms"),
                in.optionalText("signal_word"),
                in.text("text"),
                in.text("source"),
                in.text("sureness"));
    }
}
