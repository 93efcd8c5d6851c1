package hornbook.shared.store;

/**
 * A line of the change feed: a record that a deed touched.
 *
 * @param kind the name of a {@link hornbook.shared.shop.Kind}, {@code setting}, or {@code entry} with its path as id
 */
public record Change(long seq, long deed, String kind, String id) {}
