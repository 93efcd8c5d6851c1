package hornbook.indexer.words;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import org.jspecify.annotations.Nullable;

/**
 * Terms of the trade and what they mean, by their folded words. Small enough for the heap (some thousand terms); read
 * back from {@link #text()}, so that an index brings its own. A question looks up a few terms and reads only these;
 * who reads cards asks {@link #reach} and has them all read.
 */
public final class Lexicon {
    /** Longest term, in words. */
    public static final int LONGEST = 6;

    private static final char CELL = '\t';

    private final String text;
    /** Where each line begins; the lines are in the order of their terms. */
    private final int[] lines;

    private volatile @Nullable Whole whole;

    private Lexicon(String text) {
        this.text = text;
        int[] starts = new int[1 + text.length() / 8];
        int count = 0;
        for (int at = 0; at < text.length(); at = text.indexOf('\n', at) + 1) {
            starts = count == starts.length ? Arrays.copyOf(starts, 2 * count) : starts;
            starts[count++] = at;
        }
        lines = Arrays.copyOf(starts, count);
    }

    /**
     * All terms at hand.
     *
     * @param reach for a first word, how many words the longest term has that begins with it
     */
    private record Whole(Map<String, List<Sense>> senses, Map<String, Integer> reach) {}

    /** A lexicon of no terms. */
    public static Lexicon empty() {
        return new Lexicon("");
    }

    static Lexicon of(NavigableMap<String, List<Sense>> terms) {
        StringBuilder text = new StringBuilder();
        terms.forEach((term, senses) -> {
            text.append(term);
            for (Sense sense : senses) {
                text.append(CELL).append(sense.concept());
                text.append(CELL).append(sense.share()).append(CELL).append(sense.kind());
            }
            text.append('\n');
        });
        return new Lexicon(text.toString());
    }

    /** How many words the longest term has that begins with that word; 0 where none does. */
    public int reach(String first) {
        return whole().reach.getOrDefault(first, 0);
    }

    private Whole whole() {
        Whole known = whole;
        if (known == null) {
            known = new Whole(new HashMap<>(), new HashMap<>());
            for (int line = 0; line < lines.length; line++) {
                String term = term(line);
                int blank = term.indexOf(' ');
                int words = 1 + (int) term.chars().filter(c -> c == ' ').count();
                known.reach.merge(blank < 0 ? term : term.substring(0, blank), words, Math::max);
                known.senses.put(term, senses(line));
            }
            whole = known;
        }
        return known;
    }

    /** What a term means; empty where it is none. */
    public List<Sense> senses(String term) {
        Whole known = whole;
        if (known != null) {
            return known.senses.getOrDefault(term, List.of());
        }
        int line = firstFrom(term);
        return line < lines.length && compare(line, term) == 0 ? senses(line) : List.of();
    }

    /** Terms that begin so, at most that many, in the order of the alphabet. */
    public List<Map.Entry<String, List<Sense>>> beginning(String start, int most) {
        List<Map.Entry<String, List<Sense>>> found = new ArrayList<>();
        for (int line = firstFrom(start); line < lines.length && found.size() < most; line++) {
            if (!text.startsWith(start, lines[line])) {
                break;
            }
            found.add(Map.entry(term(line), senses(line)));
        }
        return found;
    }

    /** Every term of one word. */
    public List<String> words() {
        List<String> words = new ArrayList<>();
        for (int line = 0; line < lines.length; line++) {
            String term = term(line);
            if (term.indexOf(' ') < 0) {
                words.add(term);
            }
        }
        return words;
    }

    public int size() {
        return lines.length;
    }

    /** One line a term: the term, then concept, share and kind of each sense, parted by tabs. */
    public String text() {
        return text;
    }

    /** The lexicon that {@link #text()} wrote. */
    public static Lexicon read(String text) {
        return new Lexicon(text);
    }

    /** The first line whose term is not before that one. */
    private int firstFrom(String term) {
        int from = 0;
        int to = lines.length;
        while (from < to) {
            int middle = (from + to) >>> 1;
            if (compare(middle, term) < 0) {
                from = middle + 1;
            } else {
                to = middle;
            }
        }
        return from;
    }

    private int compare(int line, String term) {
        int start = lines[line];
        for (int i = 0; i < term.length(); i++) {
            char c = text.charAt(start + i);
            if (ends(c)) {
                return -1;
            }
            if (c != term.charAt(i)) {
                return c - term.charAt(i);
            }
        }
        return ends(text.charAt(start + term.length())) ? 0 : 1;
    }

    private static boolean ends(char c) {
        return c == CELL || c == '\n';
    }

    private String term(int line) {
        int end = lines[line];
        while (!ends(text.charAt(end))) {
            end++;
        }
        return text.substring(lines[line], end);
    }

    private List<Sense> senses(int line) {
        int end = text.indexOf('\n', lines[line]);
        String[] cells = text.substring(lines[line], end).split(String.valueOf(CELL), -1);
        List<Sense> senses = new ArrayList<>();
        for (int i = 1; i + 2 < cells.length; i += 3) {
            senses.add(new Sense(cells[i], Float.parseFloat(cells[i + 1]), cells[i + 2]));
        }
        return List.copyOf(senses);
    }
}
