package hornbook.indexer.index;

import java.util.ArrayList;
import java.util.List;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.TermFrequencyAttribute;

/** Hands terms to Lucene with their impact in the place of their frequency. */
final class ImpactStream extends TokenStream {
    private final CharTermAttribute term = addAttribute(CharTermAttribute.class);
    private final TermFrequencyAttribute frequency = addAttribute(TermFrequencyAttribute.class);
    private final List<String> terms = new ArrayList<>();
    private final List<Integer> impacts = new ArrayList<>();
    private int next;

    void add(String text, int impact) {
        terms.add(text);
        impacts.add(impact);
    }

    @Override
    public void reset() {
        next = 0;
    }

    @Override
    public boolean incrementToken() {
        if (next == terms.size()) {
            return false;
        }
        clearAttributes();
        term.append(terms.get(next));
        frequency.setTermFrequency(impacts.get(next));
        next++;
        return true;
    }
}
