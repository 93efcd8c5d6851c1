package hornbook.indexer.search;

import hornbook.indexer.index.Terms;
import hornbook.shared.measure.Measured;
import hornbook.shared.measure.Size;
import org.apache.lucene.document.LongPoint;
import org.apache.lucene.document.LongRange;
import org.apache.lucene.index.Term;
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
    private static final float SPAN_SCORE = 0.35f;

    /** What is compared. */
    sealed interface By {
        /** A term of the index. */
        record OfTerm(String term) implements By {}

        /** A size within the tolerance of the size matcher. */
        record OfSize(Measured size) implements By {}

        /** A range, from one size to another, in which the size lies. */
        record OfSpan(Measured size) implements By {}

        /** A serial number inside a run of a model. */
        record OfRun(long serial) implements By {}
    }

    static Way term(String term, float share, String reading) {
        return new Way(new By.OfTerm(term), share, reading);
    }

    static Way size(Measured size, float share) {
        return new Way(new By.OfSize(size), share, "");
    }

    Way worth(float part) {
        return new Way(by, share * part, reading);
    }

    Query query(float boost) {
        return switch (by) {
            case By.OfTerm(String term) -> new BoostQuery(new TermQuery(new Term(Terms.TERM, term)), boost * share);
            case By.OfSize(Measured size) -> constant(sizes(size), boost * share * SIZE_SCORE);
            case By.OfSpan(Measured size) -> constant(spans(size), boost * share * SPAN_SCORE);
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
        return LongPoint.newRangeQuery(Terms.SIZE, low(size), high(size));
    }

    private static Query spans(Measured size) {
        return LongRange.newIntersectsQuery(Terms.SPAN, new long[] {low(size)}, new long[] {high(size)});
    }

    private static long low(Measured size) {
        return size.low().minus(Size.TOLERANCE).nanometres();
    }

    private static long high(Measured size) {
        return size.high().plus(Size.TOLERANCE).nanometres();
    }
}
