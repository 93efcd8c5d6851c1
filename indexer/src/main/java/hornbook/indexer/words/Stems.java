package hornbook.indexer.words;

import java.util.LinkedHashMap;
import java.util.Map;
import org.tartarus.snowball.ext.EnglishStemmer;

/** English stems (Porter 2, by Snowball). Remembers what it has seen; one for each thread. */
public final class Stems {
    private static final int REMEMBERED = 20_000;
    private static final int SHORTEST = 4;

    private final EnglishStemmer stemmer = new EnglishStemmer();
    private final Map<String, String> seen = new LinkedHashMap<>();

    /** The stem of a folded word; short words and what holds a digit or a sign stay as they are. */
    public String of(String word) {
        if (word.length() < SHORTEST || !plain(word)) {
            return word;
        }
        String known = seen.get(word);
        if (known != null) {
            return known;
        }
        stemmer.setCurrent(word);
        stemmer.stem();
        String stem = stemmer.getCurrent();
        if (seen.size() < REMEMBERED) {
            seen.put(word, stem);
        }
        return stem;
    }

    private static boolean plain(String word) {
        for (int i = 0; i < word.length(); i++) {
            char c = word.charAt(i);
            if (c < 'a' || c > 'z') {
                return false;
            }
        }
        return true;
    }
}
