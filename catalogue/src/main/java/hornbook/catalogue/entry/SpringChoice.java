package hornbook.catalogue.entry;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Usual springs of a group of keys.
 *
 * @param title the keys
 * @param cups ids of the cups it works
 * @param sizes by instrument, mm
 * @param freeLengthAlto mm
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record SpringChoice(
        String id,
        String title,
        SpringForm form,
        List<String> cups,
        Map<String, SpringSize> sizes,
        Span freeLengthAlto,
        @Nullable String notes,
        String source,
        String sureness)
        implements Entry {

    /** Keeps its own copies. */
    public SpringChoice {
        cups = List.copyOf(cups);
        sizes = Ordered.copy(sizes);
    }

    static SpringChoice from(Fields in) {
        return new SpringChoice(
                in.text("id"),
                in.text("title"),
                in.word("form", SpringForm.values()),
                in.texts("cups"),
                in.byName("sizes", SpringSize::from),
                in.one("free_length_alto", Span::from),
                in.optionalText("notes"),
                in.text("source"),
                in.text("sureness"));
    }
}
