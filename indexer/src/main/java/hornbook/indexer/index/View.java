package hornbook.indexer.index;

import hornbook.indexer.words.Lexicon;
import hornbook.indexer.words.TextReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.lucene.index.BinaryDocValues;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.PostingsEnum;
import org.apache.lucene.index.ReaderUtil;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.search.IndexSearcher;
import org.jspecify.annotations.Nullable;

/**
 * The index at one moment, to be searched.
 *
 * @param asOf when it was brought up to date last, where the books have gone on since
 */
public record View(IndexSearcher searcher, Lexicon lexicon, TextReader reader, Optional<Instant> asOf) {

    /** How many records can be found. */
    public int documents() {
        return searcher.getIndexReader().numDocs();
    }

    /** The row of a document. */
    public Row row(int document) {
        try {
            LeafReaderContext leaf = leaf(document);
            return row(leaf.reader().getBinaryDocValues(Terms.ROW), document, leaf);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * The rows of some documents: for many of them quicker than one by one.
     *
     * @param documents in rising order
     */
    public List<Row> rows(int[] documents) {
        List<Row> rows = new ArrayList<>(documents.length);
        try {
            int at = 0;
            for (LeafReaderContext leaf : searcher.getIndexReader().leaves()) {
                int end = leaf.docBase + leaf.reader().maxDoc();
                BinaryDocValues there = null;
                for (; at < documents.length && documents[at] < end; at++) {
                    there = there == null ? leaf.reader().getBinaryDocValues(Terms.ROW) : there;
                    rows.add(row(there, documents[at], leaf));
                }
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Row row(@Nullable BinaryDocValues rows, int document, LeafReaderContext leaf) throws IOException {
        if (rows == null || !rows.advanceExact(document - leaf.docBase)) {
            throw new IllegalStateException("document " + document + " has no row");
        }
        return Row.read(rows.binaryValue());
    }

    /** The document of a record, -1 where there is none. */
    public int document(String id) {
        return document(Terms.ID, id);
    }

    /** The first document that has a term in a field, -1 where there is none. */
    public int document(String field, String term) {
        try {
            for (LeafReaderContext leaf : searcher.getIndexReader().leaves()) {
                int found = inLeaf(leaf, field, term);
                if (found >= 0) {
                    return leaf.docBase + found;
                }
            }
            return -1;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static int inLeaf(LeafReaderContext leaf, String field, String term) throws IOException {
        @Nullable PostingsEnum postings = leaf.reader().postings(new Term(field, term), PostingsEnum.NONE);
        if (postings == null) {
            return -1;
        }
        var live = leaf.reader().getLiveDocs();
        for (int doc = postings.nextDoc(); doc != DocIdSetIterator.NO_MORE_DOCS; doc = postings.nextDoc()) {
            if (live == null || live.get(doc)) {
                return doc;
            }
        }
        return -1;
    }

    private LeafReaderContext leaf(int document) {
        var leaves = searcher.getIndexReader().leaves();
        return leaves.get(ReaderUtil.subIndex(document, leaves));
    }
}
