package hornbook.indexer.search;

import hornbook.indexer.index.Terms;
import hornbook.indexer.index.View;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.Term;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.util.BytesRef;
import org.jspecify.annotations.Nullable;

/** The words of the index, and how rare they are. */
final class Vocabulary {
    private final IndexReader reader;

    Vocabulary(View view) {
        reader = view.searcher().getIndexReader();
    }

    /** In how many records a term stands. */
    int count(String term) {
        try {
            return reader.docFreq(new Term(Terms.TERM, term));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** How much a term in that many records tells: none 0.1 to rare some 10. */
    float weight(int count) {
        int all = Math.max(1, reader.numDocs());
        return (float) Math.log1p((Math.max(0, all - count) + 0.5) / (count + 0.5));
    }

    /** Words that begin so, at most that many, from all parts of the index. */
    List<String> beginning(String start, int most) {
        Set<String> found = new TreeSet<>();
        try {
            for (LeafReaderContext leaf : reader.leaves()) {
                org.apache.lucene.index.@Nullable Terms terms = leaf.reader().terms(Terms.TERM);
                if (terms != null) {
                    beginning(terms.iterator(), new BytesRef(start), most, found);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new ArrayList<>(found).subList(0, Math.min(most, found.size()));
    }

    private static void beginning(TermsEnum terms, BytesRef start, int most, Set<String> found) throws IOException {
        if (terms.seekCeil(start) == TermsEnum.SeekStatus.END) {
            return;
        }
        int seen = 0;
        for (BytesRef term = terms.term(); term != null && seen < most; term = terms.next()) {
            if (!org.apache.lucene.util.StringHelper.startsWith(term, start)) {
                return;
            }
            String word = term.utf8ToString();
            if (Terms.isWord(word)) {
                found.add(word);
                seen++;
            }
        }
    }
}
