package hornbook.indexer.search;

import java.util.List;

/**
 * A piece of the query that says one thing.
 *
 * @param said as typed
 * @param first its first word among those of the query
 * @param last its last word
 * @param ways in which it can be met, the best counts
 * @param weight how much it tells: rare things tell more
 * @param sort what sort of piece it is
 */
record Unit(String said, int first, int last, List<Way> ways, float weight, Sort sort) {

    /** What sort of piece. */
    enum Sort {
        WORD,
        TERM,
        PAIR,
        SIZE,
        NUMBER
    }

    Unit weighing(float other) {
        return new Unit(said, first, last, ways, other, sort);
    }

    Unit {
        ways = List.copyOf(ways);
    }
}
