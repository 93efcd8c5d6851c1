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
        implements Entry {}
