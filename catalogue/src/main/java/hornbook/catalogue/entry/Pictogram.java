package hornbook.catalogue.entry;

/**
 * A GHS pictogram.
 *
 * @param title the symbol
 * @param code GHS01 to GHS09
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record Pictogram(String id, String title, String code, String usedFor, String source, String sureness)
        implements Entry {

    static Pictogram from(Fields in) {
        return new Pictogram(
                in.text("id"),
                in.text("title"),
                in.text("code"),
                in.text("used_for"),
                in.text("source"),
                in.text("sureness"));
    }
}
