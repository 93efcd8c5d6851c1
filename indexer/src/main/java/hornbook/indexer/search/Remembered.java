package hornbook.indexer.search;

import hornbook.indexer.index.View;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.lucene.search.IndexSearcher;
import org.jspecify.annotations.Nullable;

/**
 * What words with a slip in them were read as, as long as the index stays as it is: to look for near words costs more than
 * the search, and while somebody types, the words before the last are the same at each key.
 */
final class Remembered {
    private static final int MOST = 500;

    private @Nullable IndexSearcher of;
    private Map<String, List<String>> slips = Map.of();

    /** To be read and added to; the oldest go first. */
    synchronized Map<String, List<String>> in(View view) {
        if (of != view.searcher()) {
            of = view.searcher();
            slips = Collections.synchronizedMap(new LinkedHashMap<>() {
                private static final long serialVersionUID = 1;

                @Override
                protected boolean removeEldestEntry(Map.Entry<String, List<String>> eldest) {
                    return size() > MOST;
                }
            });
        }
        return slips;
    }
}
