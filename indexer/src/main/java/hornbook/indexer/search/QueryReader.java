package hornbook.indexer.search;

import hornbook.indexer.index.Terms;
import hornbook.indexer.index.View;
import hornbook.indexer.words.Cutter;
import hornbook.indexer.words.Lexicon;
import hornbook.indexer.words.Sense;
import hornbook.indexer.words.Stems;
import hornbook.indexer.words.StopWords;
import hornbook.indexer.words.TextReader;
import hornbook.indexer.words.Token;
import hornbook.shared.measure.SizeMention;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads a query into what it says. */
final class QueryReader {
    private static final float PAIR = 0.35f;
    /** Words within a term that is known as a whole tell half as much by themselves. */
    private static final float WITHIN_TERM = 0.5f;

    private static final float ITSELF = 5;
    private static final float FAINT = 0.5f;
    private static final float TERM_BEGUN = 0.7f;
    private static final int BEGUN_TERMS = 6;
    private static final int BEGUN_LETTERS = 5;

    private final View view;
    private final Vocabulary vocabulary;
    private final Slips slips;
    private final Stems stems = new Stems();

    QueryReader(View view, Vocabulary vocabulary, Slips slips) {
        this.view = view;
        this.vocabulary = vocabulary;
        this.slips = slips;
    }

    Plan read(String text) {
        TextReader.Pieces pieces = view.reader().read(text);
        List<Token> all = pieces.words();
        PastTalk past = PastTalk.in(all);
        List<Token> said = past.without(all);
        boolean half = !text.isEmpty() && !Character.isWhitespace(text.charAt(text.length() - 1));
        Reading reading = new Reading(said, half, text.length());
        reading.terms();
        reading.words();
        reading.pairs();
        reading.sizes(pieces.sizes());
        reading.number(text.strip());
        reading.label(Terms.label(Cutter.joined(text)), text.strip());
        return new Plan(reading.units, reading.at, past.asked(), reading.named);
    }

    /** One query being read. */
    private final class Reading {
        private final List<Token> said;
        private final boolean half;
        private final int end;
        private final boolean[] covered;
        private final TermWays terms;
        private final WordWays words;
        private final SizeWays sizes = new SizeWays(vocabulary);
        private final List<Unit> units = new ArrayList<>();
        private final List<String> named = new ArrayList<>();
        private final boolean allSmall;
        private int at;

        Reading(List<Token> said, boolean half, int end) {
            this.said = new Compounds(view, vocabulary, slips).parted(said, half ? end : -1);
            this.half = half;
            this.end = end;
            this.covered = new boolean[this.said.size()];
            this.terms = new TermWays(view, vocabulary, languages());
            this.words = new WordWays(view, vocabulary, slips, stems, terms);
            this.at = this.said.size();
            this.allSmall = this.said.stream().allMatch(StopWords::has);
        }

        /** Languages of the words of which no English record speaks. */
        private Set<String> languages() {
            Set<String> found = new HashSet<>();
            for (int from = 0; from < said.size(); from++) {
                for (int to = from + 1; to <= Math.min(said.size(), from + Lexicon.LONGEST); to++) {
                    String term = term(from, to);
                    view.lexicon().senses(term).stream()
                            .filter(Sense::foreign)
                            .map(Sense::kind)
                            .forEach(found::add);
                }
            }
            return found;
        }

        private String term(int from, int to) {
            return String.join(
                    " ", said.subList(from, to).stream().map(Token::text).toList());
        }

        /** Terms of several words; the longest come first and leave less to those within. */
        void terms() {
            for (int length = Math.min(Lexicon.LONGEST, said.size()); length > 1; length--) {
                for (int from = 0; from + length <= said.size(); from++) {
                    boolean within = covered[from] || covered[from + length - 1];
                    term(from, from + length, within ? WITHIN_TERM : 1);
                }
            }
            if (half && !said.isEmpty()) {
                begun();
            }
            for (int i = 0; i < said.size(); i++) {
                named.add(said.get(i).text());
            }
        }

        private void term(int from, int to, float share) {
            String term = term(from, to);
            List<Way> ways = terms.ways(term);
            if (!ways.isEmpty()) {
                units.add(new Unit(term, from, to - 1, ways, share * vocabulary.weight(most(ways)), Unit.Sort.TERM));
                java.util.Arrays.fill(covered, from, to, true);
                named.add(term);
            }
        }

        /** A term of several words, the last of them half typed: {@code hot mel}. */
        private void begun() {
            for (int from = Math.max(0, said.size() - Lexicon.LONGEST); from < said.size() - 1; from++) {
                String start = term(from, said.size());
                List<Way> ways = new ArrayList<>();
                if (start.length() >= BEGUN_LETTERS && said.getLast().end() == end) {
                    for (Map.Entry<String, List<Sense>> term : view.lexicon().beginning(start, BEGUN_TERMS)) {
                        terms.ways(term.getKey()).forEach(way -> ways.add(way.worth(TERM_BEGUN)));
                    }
                }
                if (!ways.isEmpty()) {
                    float weight = vocabulary.weight(most(ways));
                    units.add(new Unit(start, from, said.size() - 1, ways, weight, Unit.Sort.TERM));
                    return;
                }
            }
        }

        private int most(List<Way> ways) {
            int most = 0;
            for (Way way : ways) {
                most = way.by() instanceof Way.By.OfTerm(String term) ? Math.max(most, vocabulary.count(term)) : most;
            }
            return most;
        }

        void words() {
            for (int i = 0; i < said.size(); i++) {
                Token token = said.get(i);
                if (StopWords.has(token) && !allSmall) {
                    continue;
                }
                boolean last = half && token.end() == end;
                Unit unit = token.number() ? sizes.number(token, i, last) : words.unit(token, i, last);
                float part = (covered[i] ? WITHIN_TERM : 1) * (StopWords.faint(token) ? FAINT : 1);
                units.add(unit.weighing(unit.weight() * part));
            }
        }

        /** The whole text as the number of a record: {@code d-card-r5c5}. */
        void number(String text) {
            String id = Terms.id(text);
            if (text.indexOf('-') > 0 && vocabulary.count(id) > 0) {
                float weight = ITSELF * vocabulary.weight(1);
                units.add(new Unit(text, 0, at, List.of(Way.term(id, 1, "is its number")), weight, Unit.Sort.NUMBER));
            }
        }

        /** The whole text as it stands on a label of several words. */
        void label(String label, String text) {
            int count = said.size() > 1 ? vocabulary.count(label) : 0;
            if (count > 0) {
                Way way = Way.term(label, 1, "stands on the label");
                units.add(new Unit(text, 0, at, List.of(way), vocabulary.weight(count), Unit.Sort.TERM));
            }
        }

        void pairs() {
            for (int i = 0; i + 1 < said.size(); i++) {
                if (StopWords.has(said.get(i)) || StopWords.has(said.get(i + 1))) {
                    continue;
                }
                String pair = Terms.pair(
                        stems.of(said.get(i).text()), stems.of(said.get(i + 1).text()));
                int count = covered[i] && covered[i + 1] ? 0 : vocabulary.count(pair);
                if (count > 0) {
                    String said = term(i, i + 2);
                    Way way = Way.term(pair, PAIR, "");
                    units.add(new Unit(said, i, i + 1, List.of(way), vocabulary.weight(count), Unit.Sort.PAIR));
                }
            }
        }

        void sizes(List<SizeMention> mentions) {
            for (SizeMention size : mentions) {
                units.add(sizes.unit(size, at));
                for (Token word : sizes.words(size)) {
                    units.add(words.unit(word, at, false));
                }
                at++;
            }
        }
    }
}
