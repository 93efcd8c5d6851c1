package hornbook.indexer.index;

import org.apache.lucene.index.FieldInvertState;
import org.apache.lucene.search.CollectionStatistics;
import org.apache.lucene.search.TermStatistics;
import org.apache.lucene.search.similarities.Similarity;

/** A term scores its impact times what the query gives it: weighing was done when the card was read. */
public final class ImpactSimilarity extends Similarity {

    @Override
    public long computeNorm(FieldInvertState state) {
        return 1;
    }

    @Override
    public SimScorer scorer(float boost, CollectionStatistics collection, TermStatistics... terms) {
        return new SimScorer() {
            @Override
            public float score(float frequency, long norm) {
                return boost * frequency / Impacts.MOST;
            }
        };
    }
}
