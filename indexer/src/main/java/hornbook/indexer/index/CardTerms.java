package hornbook.indexer.index;

import hornbook.indexer.card.Card;
import hornbook.indexer.card.Field;
import hornbook.indexer.words.Cutter;
import hornbook.indexer.words.Lexicon;
import hornbook.indexer.words.Sense;
import hornbook.indexer.words.Stems;
import hornbook.indexer.words.StopWords;
import hornbook.indexer.words.TextReader;
import hornbook.indexer.words.Token;
import hornbook.shared.measure.Size;
import hornbook.shared.measure.SizeMention;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Reads a card's texts into terms with their weight, and its sizes. For one thread. */
final class CardTerms {
    private static final float STEM = 0.9f;
    private static final String PLACE = "place";
    /** All that stands on a label, typed as it stands. */
    private static final float WHOLE_LABEL = 5;

    private static final float ITSELF = 20;
    /** Names begin with the thing and go on, after a comma, with what tells it from others. */
    private static final float HEAD = 1.25f;

    private static final float MEANT = 0.9f;
    private static final float WITHIN = 0.5f;
    /** However often a card speaks of a thing, it is less about it than the card of the thing itself. */
    private static final float MOST_MEANT = 3.5f;

    private final Lexicon lexicon;
    private final TextReader reader;
    private final Stems stems = new Stems();

    CardTerms(Lexicon lexicon, TextReader reader) {
        this.lexicon = lexicon;
        this.reader = reader;
    }

    /** What was read. */
    record Found(Impacts impacts, List<Size> sizes, Map<String, Float> meant) {}

    Found read(Card card) {
        Found found = new Found(new Impacts(), new ArrayList<>(), new HashMap<>());
        card.texts().forEach((field, texts) -> texts.forEach(text -> text(field, text, found)));
        if (card.kind().equals(PLACE)) {
            card.texts()
                    .getOrDefault(Field.LABEL, List.of())
                    .forEach(label -> found.impacts.add(Terms.label(Cutter.joined(label)), WHOLE_LABEL));
        }
        found.meant.forEach(
                (concept, weight) -> found.impacts.add(Terms.concept(concept), Math.min(MOST_MEANT, weight)));
        card.concepts().forEach((concept, weight) -> found.impacts.add(Terms.concept(concept), weight));
        found.impacts.add(Terms.id(card.id()), ITSELF);
        card.sizes().forEach(written -> size(written, found));
        return found;
    }

    private void text(Field field, String text, Found found) {
        TextReader.Pieces pieces = reader.read(text);
        float weight = field.weight(pieces.words().size());
        if (field == Field.LABEL) {
            pieces.words().forEach(word -> found.impacts.add(Terms.label(word.text()), weight));
            return;
        }
        if (field == Field.WHOLE) {
            found.impacts.add(Terms.whole(Cutter.joined(text)), weight);
            return;
        }
        int head = field == Field.TITLE && text.indexOf(',') > 0 ? text.indexOf(',') : 0;
        words(field, pieces.words(), weight, head, found.impacts);
        meanings(pieces.words(), weight * MEANT, found.meant);
        pieces.sizes().forEach(size -> size(size, weight, found));
    }

    private void words(Field field, List<Token> words, float usual, int head, Impacts impacts) {
        boolean name = field == Field.TITLE || field == Field.NAME;
        String before = "";
        for (int i = 0; i < words.size(); i++) {
            Token word = words.get(i);
            if (StopWords.has(word) || articleA(word, i, field)) {
                continue;
            }
            float weight = word.end() <= head ? usual * HEAD : usual;
            String stem = stems.of(word.text());
            impacts.add(word.text(), weight);
            if (!stem.equals(word.text())) {
                impacts.add(stem, weight * STEM);
            }
            if (name) {
                beginnings(word.text(), weight, impacts);
                if (!before.isEmpty() && sameBreath(words.get(i - 1), word)) {
                    impacts.add(Terms.pair(before, stem), weight);
                }
            }
            before = stem;
        }
    }

    /** Nothing but a blank or a hyphen between them. */
    private static boolean sameBreath(Token first, Token second) {
        return second.start() - first.end() <= 1;
    }

    /** At the start of a sentence A is the article; in a title it may be the key. */
    private static boolean articleA(Token word, int at, Field field) {
        return at == 0 && word.text().equals("a") && field != Field.TITLE;
    }

    private static void beginnings(String word, float weight, Impacts impacts) {
        for (int n = 1; n <= Math.min(Terms.LETTERS, word.length()); n++) {
            impacts.atLeast(Terms.beginning(word.substring(0, n)), weight);
        }
    }

    /**
     * Terms of the trade stand for what they mean, so that other words for it find the card. Within a longer term they
     * stand for less: {@code neck cork} is first of all a cork for the neck.
     */
    private void meanings(List<Token> words, float weight, Map<String, Float> meant) {
        int covered = 0;
        for (int at = 0; at < words.size(); at++) {
            boolean within = at < covered;
            covered = Math.max(covered, at + meaning(words, at, within ? weight * WITHIN : weight, meant));
        }
    }

    /** Length of the longest term that begins there. */
    private int meaning(List<Token> words, int at, float weight, Map<String, Float> meant) {
        int reach = Math.min(lexicon.reach(words.get(at).text()), words.size() - at);
        StringBuilder term = new StringBuilder();
        List<List<Sense>> found = new ArrayList<>();
        int length = 0;
        for (int n = 0; n < reach; n++) {
            term.append(n == 0 ? "" : " ").append(words.get(at + n).text());
            List<Sense> senses = n == 0 && StopWords.has(words.get(at)) ? List.of() : lexicon.senses(term.toString());
            if (!senses.isEmpty()) {
                found.add(senses);
                length = n + 1;
            }
        }
        for (int i = 0; i < found.size(); i++) {
            float counts = i == found.size() - 1 ? weight : weight * WITHIN;
            found.get(i).stream()
                    .filter(sense -> !sense.foreign())
                    .forEach(sense ->
                            meant.merge(sense.concept(), counts * (sense.nearly() ? 1 : sense.share()), Float::sum));
        }
        return length;
    }

    private void size(String written, Found found) {
        reader.mentions(written).forEach(size -> size(size, Field.NAME.weight(6), found));
    }

    private static void size(SizeMention mention, float weight, Found found) {
        switch (mention.size()) {
            case Size.Plain plain -> found.sizes.add(plain);
            case Size.OfThread(var meanings) ->
                meanings.forEach(thread -> found.impacts.add(Terms.thread(thread.designation()), weight));
        }
    }
}
