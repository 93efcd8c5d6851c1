package hornbook.shared.stock;

/**
 * A place that is no drawer as one passes it: a hook, a shelf, a tube, a parts horn.
 *
 * @param kind what it is, in a word or two
 * @param where where it is
 * @param lots how many lots lie there
 * @param tools how many tools hang or lie there
 */
public record PlaceFront(String id, String name, String kind, String where, int lots, int tools) {}
