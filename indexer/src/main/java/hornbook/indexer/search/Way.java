package hornbook.indexer.search;

import hornbook.indexer.index.Terms;
import hornbook.shared.measure.Measured;
import hornbook.shared.measure.Size;
import java.util.Optional;
import java.util.function.Supplier;
import org.apache.lucene.document.LongPoint;
import org.apache.lucene.document.LongRange;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.ConstantScoreQuery;
import org.apache.lucene.search.Query;

/**
 * One way in which a piece of the query can be met.
 *
 * @param share what meeting it so is worth, 0 to 1
 * @param said how the piece was read where that is not as written: {@code means neck}, {@code read as seized}; asked only
 *     for what is shown
 */
record Way(By by, float share, Supplier<String> said) {
    private static final float SURE = 0.5f;
    private static final String PART = Terms.concept("part-");
    private static final String SUPPLY = Terms.concept("sup-");
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

    static Way of(By by, float share, String reading) {
        return new Way(by, share, () -> reading);
    }

    static Way term(String term, float share, String reading) {
        return of(new By.OfTerm(term), share, reading);
    }

    static Way size(Measured size, float share) {
        return of(new By.OfSize(size), share, "");
    }

    Way worth(float part) {
        return new Way(by, share * part, said);
    }

    /** The part or supply that it means, if surely one. */
    Optional<String> thing() {
        boolean one = share >= SURE
                && by instanceof By.OfTerm(String term)
                && (term.startsWith(PART) || term.startsWith(SUPPLY));
        return one ? Optional.of(((By.OfTerm) by).term().substring(1)) : Optional.empty();
    }

    /** As written, where empty. */
    String reading() {
        return said.get();
    }

    /** Not as a switch: its first use costs a command more than the search does. */
    Query query(float boost, Vocabulary vocabulary) {
        if (by instanceof By.OfTerm(String term)) {
            return new BoostQuery(vocabulary.query(term), boost * share);
        }
        if (by instanceof By.OfSize(Measured size)) {
            return constant(sizes(size), boost * share * SIZE_SCORE);
        }
        if (by instanceof By.OfSpan(Measured size)) {
            return constant(spans(size), boost * share * SPAN_SCORE);
        }
        long[] serial = {((By.OfRun) by).serial()};
        return constant(LongRange.newContainsQuery(Terms.RUN, serial, serial), boost * share);
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
