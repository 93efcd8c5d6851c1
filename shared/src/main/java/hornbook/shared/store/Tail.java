package hornbook.shared.store;

import org.jspecify.annotations.Nullable;

/**
 * Where the books end.
 *
 * @param deed the last deed's number, 0 in new books
 * @param seq the last feed line's number, 0 in new books
 * @param link the end of the chain over all deeds
 */
record Tail(long deed, long seq, byte @Nullable [] link) {
    static Tail of(Query query) {
        return query.first(
                        "select number, (select coalesce(max(seq), 0) from feed), chain from deed "
                                + "order by number desc limit 1",
                        r -> new Tail(r.getLong(1), r.getLong(2), r.getBytes(3)))
                .orElse(new Tail(0, 0, null));
    }
}
