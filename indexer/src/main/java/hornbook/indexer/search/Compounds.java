package hornbook.indexer.search;

import hornbook.indexer.index.View;
import hornbook.indexer.words.Token;
import java.util.ArrayList;
import java.util.List;

/** Two words written as one: {@code Trillklappe}, {@code thumbhook}. Only where the whole is no word, nor near one. */
final class Compounds {
    private static final int SHORTEST_PART = 4;
    /** Words of the trade may be shorter: {@code padcup}. */
    private static final int SHORTEST_TERM = 3;

    private final View view;
    private final Vocabulary vocabulary;
    private final Slips slips;

    Compounds(View view, Vocabulary vocabulary, Slips slips) {
        this.view = view;
        this.vocabulary = vocabulary;
        this.slips = slips;
    }

    /**
     * The words with such as are two parted.
     *
     * @param half where a word ends that may be half typed, -1 if none is
     */
    List<Token> parted(List<Token> said, int half) {
        List<Token> all = new ArrayList<>();
        for (Token word : said) {
            int at = unknown(word.text(), word.end() == half) ? seam(word.text()) : 0;
            if (at > 0) {
                int seam = word.start() + at;
                all.add(new Token(word.text().substring(0, at), word.start(), seam, word.capital()));
                all.add(new Token(word.text().substring(at), seam, word.end(), false));
            } else {
                all.add(word);
            }
        }
        return all;
    }

    private boolean unknown(String word, boolean half) {
        return word.length() >= 2 * SHORTEST_TERM
                && Slips.forgivable(word)
                && !stands(word)
                && !means(word)
                && !(half && begins(word))
                && slips.near(word, false).isEmpty();
    }

    private boolean begins(String word) {
        return !vocabulary.beginning(word, 1).isEmpty()
                || !view.lexicon().beginning(word, 1).isEmpty();
    }

    /** Where the second word begins, as late as can be; 0 where there are no two. */
    private int seam(String word) {
        for (int at = word.length() - SHORTEST_TERM; at >= SHORTEST_TERM; at--) {
            String first = word.substring(0, at);
            String second = word.substring(at);
            boolean long4 = first.length() >= SHORTEST_PART && second.length() >= SHORTEST_PART;
            if (long4 ? known(first) && known(second) : means(first) && means(second)) {
                return at;
            }
        }
        return 0;
    }

    private boolean known(String word) {
        return stands(word) || means(word);
    }

    private boolean stands(String word) {
        return vocabulary.count(word) > 0;
    }

    private boolean means(String word) {
        return !view.lexicon().senses(word).isEmpty();
    }
}
