package hornbook.indexer.card;

import hornbook.indexer.words.Cutter;
import hornbook.indexer.words.Stems;
import hornbook.indexer.words.StopWords;
import hornbook.indexer.words.Token;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** How like each other cards are by the rare words they share: the cosine of their weighted words. */
final class Likeness {
    private static final int MOST = 6;
    private static final double LEAST = 0.12;

    private final Stems stems = new Stems();
    private final Map<String, Map<String, Double>> cards = new HashMap<>();
    private final Map<String, List<String>> holders = new HashMap<>();

    void add(Draft card) {
        Map<String, Double> words = new HashMap<>();
        card.texts().forEach((field, texts) -> {
            if (field != Field.ALIAS) {
                texts.forEach(text -> words(field, text, words));
            }
        });
        cards.put(card.id(), words);
        words.keySet()
                .forEach(word ->
                        holders.computeIfAbsent(word, w -> new ArrayList<>()).add(card.id()));
    }

    private void words(Field field, String text, Map<String, Double> words) {
        List<Token> tokens = Cutter.cut(text);
        for (Token token : tokens) {
            if (!StopWords.has(token) && !StopWords.faint(token) && token.letters()) {
                words.merge(stems.of(token.text()), (double) field.weight(tokens.size()), Double::sum);
            }
        }
    }

    /** For each card those most like it, from 0 to 1. */
    void each(TriConsumer to) {
        cards.forEach((id, words) -> {
            words.replaceAll((word, weight) -> Math.log1p(weight)
                    * Math.log((double) cards.size() / holding(word).size()));
            double length =
                    Math.sqrt(words.values().stream().mapToDouble(w -> w * w).sum());
            words.replaceAll((word, weight) -> weight / length);
        });
        for (String id : cards.keySet()) {
            nearest(id).forEach((other, share) -> to.accept(id, other, share));
        }
    }

    private Map<String, Double> nearest(String id) {
        Map<String, Double> dot = new HashMap<>();
        words(id)
                .forEach((word, weight) -> holding(word)
                        .forEach(
                                other -> dot.merge(other, weight * words(other).getOrDefault(word, 0.0), Double::sum)));
        dot.remove(id);
        Map<String, Double> best = new HashMap<>();
        dot.entrySet().stream()
                .filter(e -> e.getValue() > LEAST)
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .limit(MOST)
                .forEach(e -> best.put(e.getKey(), e.getValue()));
        return best;
    }

    private List<String> holding(String word) {
        return holders.getOrDefault(word, List.of());
    }

    private Map<String, Double> words(String id) {
        return cards.getOrDefault(id, Map.of());
    }

    /** Takes two ids and how like they are. */
    interface TriConsumer {
        void accept(String id, String other, double share);
    }
}
