package hornbook.catalogue.entry;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A pad cup: its names, how it rests, usual pads and openings.
 *
 * @param title usual name
 * @param order from the top of the tube down, from 1
 * @param pads by instrument
 * @param heights opening at the front of the cup, mm, by instrument
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record Cup(
        String id,
        String title,
        int order,
        Rest rest,
        Map<String, PadRange> pads,
        Map<String, Span> heights,
        @Nullable String note,
        String source,
        String sureness)
        implements Entry {

    /** Keeps its own copies. */
    public Cup {
        pads = Ordered.copy(pads);
        heights = Ordered.copy(heights);
    }

    static Cup from(Fields in) {
        return new Cup(
                in.text("id"),
                in.text("title"),
                in.whole("order"),
                in.word("rest", Rest.values()),
                in.byName("pads", PadRange::from),
                in.byName("heights", Span::from),
                in.optionalText("note"),
                in.text("source"),
                in.text("sureness"));
    }
}
