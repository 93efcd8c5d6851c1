package hornbook.catalogue.entry;

/**
 * A solder or brazing filler.
 *
 * @param number in the standard
 * @param composition per cent
 * @param solidus degrees C
 * @param liquidus degrees C
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record Alloy(
        String id,
        String title,
        String standard,
        String number,
        String composition,
        double solidus,
        double liquidus,
        boolean cadmium,
        boolean lead,
        String source,
        String sureness)
        implements Entry {

    static Alloy from(Fields in) {
        return new Alloy(
                in.text("id"),
                in.text("title"),
                in.text("standard"),
                in.text("number"),
                in.text("composition"),
                in.number("solidus"),
                in.number("liquidus"),
                in.yes("cadmium"),
                in.yes("lead"),
                in.text("source"),
                in.text("sureness"));
    }
}
