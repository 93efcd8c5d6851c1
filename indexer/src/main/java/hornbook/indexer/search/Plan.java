package hornbook.indexer.search;

import java.util.List;

/**
 * A query as read.
 *
 * @param units what it says
 * @param words how many words of it count
 * @param past whether it asks for jobs done before
 * @param named words and terms in it, each of which may have an entry as a word
 */
record Plan(List<Unit> units, int words, boolean past, List<String> named) {
    Plan {
        units = List.copyOf(units);
        named = List.copyOf(named);
    }
}
