package hornbook.indexer.search;

import hornbook.indexer.index.Terms;
import hornbook.shared.measure.Measured;
import hornbook.shared.measure.Size;
import org.apache.lucene.document.LongPoint;
import org.apache.lucene.document.LongRange;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.ConstantScoreQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;

/**
 * One way in which a piece of the query can be met.
 *
 * @param share what meeting it so is worth, 0 to 1
 * @param reading how the piece was read where that is not as written: {@code means neck}, {@code read as seized}
 */
record Way(By by, float share, String reading) {
    private static final float SIZE_SCORE = 0.8f;

    /** What is compared. */
    sealed interface By {
        /** A term of the index. */
        record OfTerm(String term) implements By {}

        /** A size within the tolerance of the size matcher. */
        record OfSize(Measured size) implements By {}

        /** A serial number inside a run of a model. */
        record OfRun(long serial) implements By {}
    }

    static Way term(String term, float share, String reading) {
        return new Way(new By.OfTerm(term), share, reading);
    }

    static Way size(Measured size, float share) {
        return new Way(new By.OfSize(size), share, "");
    }

    Query query(float boost) {
        return switch (by) {
            case By.OfTerm(String term) -> new BoostQuery(new TermQuery(new Term(Terms.TERM, term)), boost * share);
            case By.OfSize(Measured size) -> constant(sizes(size), boost * share * SIZE_SCORE);
            case By.OfRun(long serial) ->
                constant(
                        LongRange.newContainsQuery(Terms.RUN, new long[] {serial}, new long[] {serial}), boost * share);
        };
    }

    private static Query constant(Query query, float score) {
        return new BoostQuery(new ConstantScoreQuery(query), score);
    }

    /** As {@link Size#same(Size)}: no further apart than the tolerance, ranges by their nearer end. */
    private static Query sizes(Measured size) {
        long low = size.low().minus(Size.TOLERANCE).nanometres();
        long high = size.high().plus(Size.TOLERANCE).nanometres();
        return new BooleanQuery.Builder()
                .add(LongPoint.newRangeQuery(Terms.SIZE, low, high), BooleanClause.Occur.SHOULD)
                .add(
                        LongRange.newIntersectsQuery(Terms.SPAN, new long[] {low}, new long[] {high}),
                        BooleanClause.Occur.SHOULD)
                .build();
    }
}
