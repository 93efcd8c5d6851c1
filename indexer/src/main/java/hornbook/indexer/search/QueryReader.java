package hornbook.indexer.search;

import hornbook.indexer.index.Terms;
import hornbook.indexer.index.View;
import hornbook.indexer.words.Lexicon;
import hornbook.indexer.words.Sense;
import hornbook.indexer.words.Stems;
import hornbook.indexer.words.StopWords;
import hornbook.indexer.words.TextReader;
import hornbook.indexer.words.Token;
import hornbook.shared.measure.SizeMention;
import java.util.ArrayList;
import java.util.List;

/** Reads a query into what it says. */
final class QueryReader {
    private static final float TERM = 0.9f;
    private static final float PAIR = 0.35f;
    private static final float WITHIN_LONGER = 0.4f;

    private final View view;
    private final Vocabulary vocabulary;
    private final WordWays words;
    private final SizeWays sizes;
    private final Stems stems = new Stems();

    QueryReader(View view) {
        this.view = view;
        vocabulary = new Vocabulary(view);
        words = new WordWays(view, vocabulary, stems);
        sizes = new SizeWays(vocabulary);
    }

    Plan read(String text) {
        TextReader.Pieces pieces = view.reader().read(text);
        List<Token> all = pieces.words();
        PastTalk past = PastTalk.in(all);
        List<Token> said = past.without(all);
        boolean half = !text.isEmpty() && !Character.isWhitespace(text.charAt(text.length() - 1));
        List<Unit> units = new ArrayList<>();
        List<Token> telling = said.stream().filter(t -> !StopWords.has(t)).toList();
        List<Token> kept = telling.isEmpty() ? said : telling;
        for (int i = 0; i < kept.size(); i++) {
            boolean last = half && kept.get(i).end() == text.length();
            units.add(kept.get(i).number() ? sizes.number(kept.get(i), i, last) : words.unit(kept.get(i), i, last));
        }
        pairs(kept, units);
        terms(said, kept, units);
        int at = kept.size();
        for (SizeMention size : pieces.sizes()) {
            units.add(sizes.unit(size, at++));
        }
        return new Plan(units, at, past.asked());
    }

    private void pairs(List<Token> kept, List<Unit> units) {
        for (int i = 0; i + 1 < kept.size(); i++) {
            String pair = Terms.pair(
                    stems.of(kept.get(i).text()), stems.of(kept.get(i + 1).text()));
            int count = vocabulary.count(pair);
            if (count > 0) {
                String said = kept.get(i).text() + " " + kept.get(i + 1).text();
                units.add(new Unit(
                        said, i, i + 1, List.of(Way.term(pair, PAIR, "")), vocabulary.weight(count), Unit.Sort.PAIR));
            }
        }
    }

    /** Terms of the trade among the words as said, stop words too: {@code snap on resos}. */
    private void terms(List<Token> said, List<Token> kept, List<Unit> units) {
        boolean[] covered = new boolean[said.size()];
        for (int length = Math.min(Lexicon.LONGEST, said.size()); length > 0; length--) {
            for (int from = 0; from + length <= said.size(); from++) {
                List<Token> window = said.subList(from, from + length);
                if (length == 1 && StopWords.has(window.getFirst())) {
                    continue;
                }
                boolean within = covered[from] || covered[from + length - 1];
                term(window, kept, within ? WITHIN_LONGER : 1, units, covered, from);
            }
        }
    }

    private void term(
            List<Token> window, List<Token> kept, float share, List<Unit> units, boolean[] covered, int from) {
        String term = String.join(" ", window.stream().map(Token::text).toList());
        List<Sense> senses = view.lexicon().senses(term);
        if (senses.isEmpty()) {
            return;
        }
        List<Way> ways = new ArrayList<>();
        int most = 0;
        for (Sense sense : senses) {
            String concept = Terms.concept(sense.concept());
            int count = vocabulary.count(concept);
            if (count > 0) {
                ways.add(Way.term(concept, TERM * sense.share() * share, meaning(sense)));
                most = Math.max(most, count);
            }
        }
        for (int i = 0; i < window.size(); i++) {
            covered[from + i] = true;
        }
        if (!ways.isEmpty()) {
            int first = Math.max(0, kept.indexOf(window.getFirst()));
            int last = Math.max(first, kept.indexOf(window.getLast()));
            units.add(new Unit(term, first, last, ways, vocabulary.weight(most), Unit.Sort.TERM));
        }
    }

    private static String meaning(Sense sense) {
        return sense.kind() + " for " + sense.concept();
    }
}
