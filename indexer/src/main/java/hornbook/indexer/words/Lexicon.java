package hornbook.indexer.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * Terms of the trade and what they mean, by their folded words. Small enough for the heap (some thousand terms); read
 * back from {@link #text()}, so that an index brings its own.
 */
public final class Lexicon {
    /** Longest term, in words. */
    public static final int LONGEST = 6;

    private final NavigableMap<String, List<Sense>> terms;
    private final Map<String, List<Sense>> byTerm;
    /** For a first word, how many words the longest term has that begins with it. */
    private final Map<String, Integer> reach = new HashMap<>();

    Lexicon(NavigableMap<String, List<Sense>> terms) {
        this.terms = terms;
        this.byTerm = new HashMap<>(terms);
        for (String term : terms.keySet()) {
            int blank = term.indexOf(' ');
            String first = blank < 0 ? term : term.substring(0, blank);
            int words = 1 + (int) term.chars().filter(c -> c == ' ').count();
            reach.merge(first, words, Math::max);
        }
    }

    /** How many words the longest term has that begins with that word; 0 where none does. */
    public int reach(String first) {
        return reach.getOrDefault(first, 0);
    }

    /** A lexicon of no terms. */
    public static Lexicon empty() {
        return new Lexicon(new TreeMap<>());
    }

    /** What a term means; empty where it is none. */
    public List<Sense> senses(String term) {
        return byTerm.getOrDefault(term, List.of());
    }

    /** Terms that begin so, at most that many, shortest ways first in the alphabet. */
    public List<Map.Entry<String, List<Sense>>> beginning(String start, int most) {
        List<Map.Entry<String, List<Sense>>> found = new ArrayList<>();
        for (Map.Entry<String, List<Sense>> term : terms.tailMap(start, true).entrySet()) {
            if (!term.getKey().startsWith(start) || found.size() == most) {
                break;
            }
            found.add(term);
        }
        return found;
    }

    /** Every term of one word. */
    public Iterable<String> words() {
        return terms.keySet().stream().filter(term -> term.indexOf(' ') < 0)::iterator;
    }

    public int size() {
        return terms.size();
    }

    /** One line a term: the term, then concept, share and kind of each sense, parted by tabs. */
    public String text() {
        StringBuilder text = new StringBuilder();
        terms.forEach((term, senses) -> {
            text.append(term);
            for (Sense sense : senses) {
                text.append('\t').append(sense.concept());
                text.append('\t').append(sense.share()).append('\t').append(sense.kind());
            }
            text.append('\n');
        });
        return text.toString();
    }

    /** The lexicon that {@link #text()} wrote. */
    public static Lexicon read(String text) {
        NavigableMap<String, List<Sense>> terms = new TreeMap<>();
        text.lines().forEach(line -> {
            String[] cells = line.split("\t", -1);
            List<Sense> senses = new ArrayList<>();
            for (int i = 1; i + 2 < cells.length; i += 3) {
                senses.add(new Sense(cells[i], Float.parseFloat(cells[i + 1]), cells[i + 2]));
            }
            terms.put(cells[0], List.copyOf(senses));
        });
        return new Lexicon(terms);
    }
}
