package hornbook.catalogue.entry;

/**
 * An abrasive grade.
 *
 * @param micron grain size, as the system says it
 * @param measure what the size means
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record Grit(
        String id,
        String title,
        String system,
        String grade,
        String micron,
        String measure,
        String source,
        String sureness)
        implements Entry {

    static Grit from(Fields in) {
        return new Grit(
                in.text("id"),
                in.text("title"),
                in.text("system"),
                in.text("grade"),
                in.text("micron"),
                in.text("measure"),
                in.text("source"),
                in.text("sureness"));
    }
}
