package hornbook.indexer.search;

import hornbook.indexer.index.Terms;
import hornbook.indexer.index.View;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.PostingsEnum;
import org.apache.lucene.index.Term;
import org.apache.lucene.index.TermState;
import org.apache.lucene.index.TermStates;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.util.BytesRef;
import org.apache.lucene.util.IOSupplier;
import org.apache.lucene.util.StringHelper;
import org.jspecify.annotations.Nullable;

/** The words of the index, how rare they are, and where they stand. Looks each up once a query. */
final class Vocabulary {
    private final IndexReader reader;
    private final List<LeafReaderContext> leaves;
    private final List<TermsEnum> terms = new ArrayList<>();
    private final Map<String, TermStates> known = new HashMap<>();

    Vocabulary(View view) {
        reader = view.searcher().getIndexReader();
        leaves = reader.leaves();
        try {
            for (LeafReaderContext leaf : leaves) {
                org.apache.lucene.index.@Nullable Terms all = leaf.reader().terms(Terms.TERM);
                terms.add(all == null ? TermsEnum.EMPTY : all.iterator());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** In how many records a term stands. */
    int count(String term) {
        return states(term).docFreq();
    }

    /** Records that have the term. */
    Query query(String term) {
        return new TermQuery(new Term(Terms.TERM, term), states(term));
    }

    private TermStates states(String term) {
        TermStates found = known.get(term);
        if (found == null) {
            found = lookUp(new BytesRef(term));
            known.put(term, found);
        }
        return found;
    }

    private TermStates lookUp(BytesRef term) {
        TermStates states = new TermStates(reader.getContext());
        try {
            for (int i = 0; i < leaves.size(); i++) {
                if (terms.get(i).seekExact(term)) {
                    register(states, i);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return states;
    }

    private void register(TermStates states, int leaf) throws IOException {
        TermsEnum at = terms.get(leaf);
        states.register(at.termState(), leaves.get(leaf).ord, at.docFreq(), at.totalTermFreq());
    }

    /** Where a term stands in one part of the index; null if nowhere there. */
    @Nullable
    PostingsEnum postings(String term, LeafReaderContext leaf) throws IOException {
        IOSupplier<TermState> state = states(term).get(leaf);
        TermState at = state == null ? null : state.get();
        if (at == null) {
            return null;
        }
        TermsEnum there = terms.get(leaf.ord);
        there.seekExact(new BytesRef(term), at);
        return there.postings(null, PostingsEnum.NONE);
    }

    /** How much a term in that many records tells: none 0.1 to rare some 10. */
    float weight(int count) {
        int all = Math.max(1, reader.numDocs());
        return (float) Math.log1p((Math.max(0, all - count) + 0.5) / (count + 0.5));
    }

    /** Words that begin so, at most that many, from all parts of the index. */
    List<String> beginning(String start, int most) {
        TreeMap<String, TermStates> found = new TreeMap<>();
        try {
            for (int i = 0; i < leaves.size(); i++) {
                beginning(i, new BytesRef(start), most, found);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        List<String> first = new ArrayList<>(found.keySet()).subList(0, Math.min(most, found.size()));
        // The first of all are the first of each part as well: what was seen of them is all there is.
        first.forEach(word -> known.put(word, found.get(word)));
        return first;
    }

    private void beginning(int leaf, BytesRef start, int most, Map<String, TermStates> found) throws IOException {
        TermsEnum at = terms.get(leaf);
        if (at.seekCeil(start) == TermsEnum.SeekStatus.END) {
            return;
        }
        int seen = 0;
        for (BytesRef term = at.term(); term != null && seen < most; term = at.next()) {
            if (!StringHelper.startsWith(term, start)) {
                return;
            }
            String word = term.utf8ToString();
            if (Terms.isWord(word)) {
                register(found.computeIfAbsent(word, w -> new TermStates(reader.getContext())), leaf);
                seen++;
            }
        }
    }
}
