package hornbook.indexer.search;

import hornbook.indexer.words.StopWords;
import hornbook.indexer.words.Token;
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

    boolean faint() {
        return StopWords.faint(new Token(said, 0, said.length(), false));
    }

    /** Is the other a piece of this one? */
    boolean covers(Unit other) {
        return last - first > other.last - other.first && first <= other.first && other.last <= last;
    }

    Unit weighing(float other) {
        return new Unit(said, first, last, ways, other, sort);
    }

    Unit {
        ways = List.copyOf(ways);
    }
}
