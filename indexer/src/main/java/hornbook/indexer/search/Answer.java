package hornbook.indexer.search;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was found.
 *
 * @param hits best first
 * @param tookMs milliseconds
 * @param asOf set where the index is behind the books: when it was last in step
 */
public record Answer(
        List<Hit> hits, double tookMs, @Nullable Instant asOf) {
    public Answer {
        hits = List.copyOf(hits);
    }
}
