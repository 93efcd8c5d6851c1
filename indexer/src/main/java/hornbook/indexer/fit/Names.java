package hornbook.indexer.fit;

/** What the names in a formula stand for. */
@FunctionalInterface
interface Names {
    /** The name's value; not a number where it is not known. */
    double value(String name);
}
