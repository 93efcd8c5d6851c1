package hornbook.catalogue.entry;

/**
 * A run of numbers, both ends included.
 *
 */
public record SerialRange(long from, long to) {}
