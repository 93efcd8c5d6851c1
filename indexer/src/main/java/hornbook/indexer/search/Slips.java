package hornbook.indexer.search;

import hornbook.indexer.index.Terms;
import hornbook.indexer.index.View;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.util.BytesRef;
import org.apache.lucene.util.automaton.Automata;
import org.apache.lucene.util.automaton.Automaton;
import org.apache.lucene.util.automaton.CompiledAutomaton;
import org.apache.lucene.util.automaton.LevenshteinAutomata;
import org.apache.lucene.util.automaton.Operations;
import org.jspecify.annotations.Nullable;

/** Words one slip of the finger away: a letter wrong, missing, too many, or two changed round. */
final class Slips {
    /** Shorter words have too many neighbours. */
    static final int SHORTEST = 5;

    private static final int MOST = 8;

    private final View view;
    private final Map<String, List<String>> known;

    /** @param known what was found before in the same index; is added to */
    Slips(View view, Map<String, List<String>> known) {
        this.view = view;
        this.known = known;
    }

    /** Words of the index and terms of the trade one slip from a word; with the rest of it still to be typed if half. */
    List<String> near(String word, boolean half) {
        return known.computeIfAbsent(half ? word + "*" : word, w -> find(word, half));
    }

    private List<String> find(String word, boolean half) {
        Automaton slip = new LevenshteinAutomata(word, true).toAutomaton(1);
        Automaton all = half ? Operations.concatenate(slip, Automata.makeAnyString()) : slip;
        CompiledAutomaton compiled =
                new CompiledAutomaton(Operations.determinize(all, Operations.DEFAULT_DETERMINIZE_WORK_LIMIT));
        Set<String> found = new TreeSet<>();
        inIndex(compiled, found);
        for (String term : view.lexicon().words()) {
            BytesRef bytes = new BytesRef(term);
            if (forgivable(term) && compiled.runAutomaton.run(bytes.bytes, bytes.offset, bytes.length)) {
                found.add(term);
            }
        }
        return new ArrayList<>(found).subList(0, Math.min(MOST, found.size()));
    }

    private void inIndex(CompiledAutomaton compiled, Set<String> found) {
        try {
            for (LeafReaderContext leaf : view.searcher().getIndexReader().leaves()) {
                org.apache.lucene.index.@Nullable Terms terms = leaf.reader().terms(Terms.TERM);
                if (terms != null) {
                    TermsEnum matching = compiled.getTermsEnum(terms);
                    for (BytesRef term = matching.next();
                            term != null && found.size() < 4 * MOST;
                            term = matching.next()) {
                        String text = term.utf8ToString();
                        if (forgivable(text)) {
                            found.add(text);
                        }
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Only words: never a number, thread, serial, label or id. */
    static boolean forgivable(String term) {
        return term.length() >= SHORTEST - 1 && term.chars().allMatch(Character::isLetter);
    }
}
