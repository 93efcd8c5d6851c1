package hornbook.catalogue.entry;

import org.jspecify.annotations.Nullable;

/**
 * A member of the family.
 *
 * @param member value of `family-member`
 * @param key it stands in
 * @param soundsFromWritten semitones from written to sounding pitch
 * @param lowestSounding with low B flat
 * @param highestSounding with high F
 * @param bodyHeight without neck, mm
 * @param tenon neck tenon outside diameter, mm
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record Instrument(
        String id,
        String title,
        String member,
        String key,
        @Nullable Integer soundsFromWritten,
        @Nullable String lowestSounding,
        @Nullable String highestSounding,
        @Nullable Span bodyHeight,
        @Nullable Span tenon,
        @Nullable String notes,
        String source,
        String sureness)
        implements Entry {

    static Instrument from(Fields in) {
        return new Instrument(
                in.text("id"),
                in.text("title"),
                in.text("member"),
                in.text("key"),
                in.optionalWhole("sounds_from_written"),
                in.optionalText("lowest_sounding"),
                in.optionalText("highest_sounding"),
                in.optional("body_height", Span::from),
                in.optional("tenon", Span::from),
                in.optionalText("notes"),
                in.text("source"),
                in.text("sureness"));
    }
}
