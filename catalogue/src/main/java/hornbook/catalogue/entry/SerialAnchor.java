package hornbook.catalogue.entry;

/**
 * A number believed reached in a year.
 *
 */
public record SerialAnchor(long serial, int year) {}
