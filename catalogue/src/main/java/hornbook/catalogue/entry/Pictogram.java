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
        implements Entry {}
