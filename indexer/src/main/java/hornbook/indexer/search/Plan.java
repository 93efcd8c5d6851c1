package hornbook.indexer.search;

import java.util.List;

/**
 * A query as read.
 *
 * @param units what it says
 * @param words how many words of it count
 * @param past whether it asks for jobs done before
 */
record Plan(List<Unit> units, int words, boolean past) {
    Plan {
        units = List.copyOf(units);
    }
}
