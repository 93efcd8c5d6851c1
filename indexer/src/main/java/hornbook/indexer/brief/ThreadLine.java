package hornbook.indexer.brief;

/**
 * A thread to expect.
 *
 * @param use pivot, hinge-rod, neck-screw, guard-screw …
 * @param designation as its standard writes it
 * @param probability over the candidates that state one
 */
public record ThreadLine(String use, String designation, double probability) {}
