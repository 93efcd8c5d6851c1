package hornbook.indexer.search;

import hornbook.indexer.index.Terms;
import hornbook.indexer.index.View;
import hornbook.indexer.words.Sense;
import hornbook.indexer.words.Stems;
import hornbook.indexer.words.Token;
import java.util.ArrayList;
import java.util.List;

/** In what ways a word of a query can be met: as written, by its stem, half typed, or with a slip in it. */
final class WordWays {
    private static final float STEM = 1.0f;
    private static final float LABEL = 0.5f;
    private static final float BEGUN = 0.7f;
    private static final float SLIP = 0.75f;
    private static final int ENDINGS = 48;

    private final View view;
    private final Slips slips;
    private final Vocabulary vocabulary;
    private final Stems stems;
    private final TermWays terms;

    WordWays(View view, Vocabulary vocabulary, Slips slips, Stems stems, TermWays terms) {
        this.slips = slips;
        this.terms = terms;
        this.view = view;
        this.vocabulary = vocabulary;
        this.stems = stems;
    }

    Unit unit(Token token, int at, boolean half) {
        List<Way> ways = new ArrayList<>();
        String word = token.text();
        int most = Math.max(add(ways, word, 1, ""), stem(ways, word));
        add(ways, Terms.label(word), LABEL, "on the label");
        List<Way> meant = terms.ways(word);
        ways.addAll(meant);
        for (Way way : meant) {
            most = way.by() instanceof Way.By.OfTerm(String term) ? Math.max(most, vocabulary.count(term)) : most;
        }
        boolean known = most > 0;
        if (half) {
            most = Math.max(most, begun(ways, word, known));
        }
        if (most == 0 && Slips.forgivable(word) && word.length() >= Slips.SHORTEST) {
            most = slips(ways, word, false);
            if (most == 0 && half) {
                most = slips(ways, word, true);
            }
        }
        return new Unit(word, at, at, ways, vocabulary.weight(most), Unit.Sort.WORD);
    }

    private int stem(List<Way> ways, String word) {
        String stem = stems.of(word);
        return stem.equals(word) ? 0 : add(ways, stem, STEM, "");
    }

    private int add(List<Way> ways, String term, float share, String reading) {
        int count = vocabulary.count(term);
        if (count > 0) {
            ways.add(Way.term(term, share, reading));
        }
        return count;
    }

    private int begun(List<Way> ways, String word, boolean known) {
        float share = known ? BEGUN * BEGUN : BEGUN;
        if (word.length() <= Terms.LETTERS) {
            return add(ways, Terms.beginning(word), share, "begins so");
        }
        int most = 0;
        for (String longer : vocabulary.beginning(word, ENDINGS)) {
            if (!longer.equals(word)) {
                most = Math.max(most, add(ways, longer, share, "begins so"));
            }
        }
        return most;
    }

    private int slips(List<Way> ways, String word, boolean half) {
        int most = 0;
        for (String near : slips.near(word, half)) {
            String reading = "read as " + near;
            most = Math.max(most, add(ways, near, SLIP, reading));
            for (Sense sense : view.lexicon().senses(near)) {
                most = Math.max(most, add(ways, Terms.concept(sense.concept()), SLIP * sense.share(), reading));
            }
        }
        return most;
    }
}
