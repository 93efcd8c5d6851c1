package hornbook.indexer.bench;

/** Something that answers what is typed with at most twenty rows. */
interface Peer extends AutoCloseable {
    int ROWS = 20;

    String name();

    /** How many rows it has; reads each of them whole. */
    int ask(String typed) throws Exception;

    @Override
    default void close() throws Exception {}
}
