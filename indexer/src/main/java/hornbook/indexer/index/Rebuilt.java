package hornbook.indexer.index;

/**
 * An index made anew.
 *
 * @param documents how many records can be found in it
 * @param seconds it took
 */
public record Rebuilt(int documents, double seconds) {}
