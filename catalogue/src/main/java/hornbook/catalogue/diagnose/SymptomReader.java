package hornbook.catalogue.diagnose;

import hornbook.catalogue.diagnose.PlainWords.Plain;
import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Fault;
import hornbook.catalogue.entry.Meaning;
import hornbook.catalogue.entry.Nearest;
import hornbook.catalogue.entry.Word;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Reads a player's words as faults: by their titles, and by the words that people say for them. */
final class SymptomReader {
    /**
     * The best match has to be above this. From forty complaints and forty sentences that are none (OnAndOffTopicTest): at 0.40
     * seven that are none are taken, here four; at 0.48 one, but two complaints of twenty more are refused.
     */
    private static final double LEAST = 0.44;

    /** Beside one that is, these are worth a look. */
    private static final double LEAST_BESIDE = 0.35;

    /** A single word says too little where it is no more than half of what is known. */
    private static final double HALF = 0.5;

    /** A word of the trade that no symptom has, beside one that the trade does not have either. */
    private static final double NOT_STRANGE = 0.6;

    /** A match so far under the best is passed over. */
    private static final double BESIDE_BEST = 0.6;

    private static final double NEARLY = 0.6;
    private static final int MOST = 5;
    private static final int SHORTEST_SLIP = 5;
    private static final int NAMED = 3;

    private final Catalogue catalogue;
    private final PlainWords words = new PlainWords();
    private final Map<String, Set<String>> meaningsByStem = words.meaningsByStem();
    private final Map<String, List<Plain>> phrases = new LinkedHashMap<>();
    private final Map<String, Double> weights = new HashMap<>();
    private final Set<String> trade = new HashSet<>();

    SymptomReader(Catalogue catalogue) {
        this.catalogue = catalogue;
        for (Fault fault : catalogue.faults().values()) {
            phrase(fault.id(), fault.title());
        }
        for (Word word : catalogue.all(Word.class).values()) {
            for (Meaning meaning : word.meanings()) {
                if (phrases.containsKey(meaning.same())) {
                    phrase(meaning.same(), word.title());
                }
            }
        }
        weigh();
        catalogue.all().forEach(entry -> trade.addAll(words.read(entry.title()).stems()));
    }

    private void phrase(String fault, String text) {
        phrases.computeIfAbsent(fault, f -> new ArrayList<>()).add(words.read(text));
    }

    /** A word that many faults share tells little: the logarithm of how many are without it. */
    private void weigh() {
        Map<String, Integer> having = new HashMap<>();
        for (List<Plain> of : phrases.values()) {
            Set<String> stems = new HashSet<>();
            of.forEach(phrase -> stems.addAll(phrase.stems()));
            stems.forEach(stem -> having.merge(stem, 1, Integer::sum));
        }
        having.forEach((stem, n) -> weights.put(stem, Math.log(1 + (double) phrases.size() / n)));
    }

    /** The faults that the words may mean, with shares that add up to 1, likeliest first; empty where none does. */
    Map<String, Double> read(String text) {
        String id = text.strip().toLowerCase(Locale.ROOT);
        if (phrases.containsKey(id)) {
            return Map.of(id, 1.0);
        }
        Map<String, Double> matches = matches(text);
        double best = matches.values().stream().mapToDouble(m -> m).max().orElse(0);
        if (best <= LEAST) {
            return Map.of();
        }
        Map<String, Double> taken = new LinkedHashMap<>();
        matches.entrySet().stream()
                .filter(m -> m.getValue() >= LEAST_BESIDE && m.getValue() >= BESIDE_BEST * best)
                .limit(MOST)
                .forEach(m -> taken.put(m.getKey(), m.getValue() * m.getValue()));
        double sum = taken.values().stream().mapToDouble(w -> w).sum();
        taken.replaceAll((fault, weight) -> weight / sum);
        return taken;
    }

    /** Titles of symptoms that were perhaps meant. */
    List<String> nearest(String text) {
        List<String> shared =
                matches(text).keySet().stream().limit(NAMED).map(this::title).toList();
        if (!shared.isEmpty()) {
            return shared;
        }
        String typed = text.toLowerCase(Locale.ROOT);
        return catalogue.faults().values().stream()
                .map(Fault::title)
                .sorted(Comparator.comparingInt(
                        (String title) -> Nearest.distance(typed, title.toLowerCase(Locale.ROOT)) - title.length()))
                .limit(NAMED)
                .toList();
    }

    private String title(String fault) {
        return catalogue.entry(fault).orElseThrow().title();
    }

    private Map<String, Double> matches(String text) {
        Plain said = mended(words.read(text));
        Map<String, Double> found = new HashMap<>();
        phrases.forEach((fault, of) -> {
            double best =
                    of.stream().mapToDouble(phrase -> match(phrase, said)).max().orElse(0);
            if (best > 0) {
                found.put(fault, best);
            }
        });
        Map<String, Double> sorted = new LinkedHashMap<>();
        found.entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .forEach(m -> sorted.put(m.getKey(), m.getValue()));
        return sorted;
    }

    /** How much of the phrase was said, and how much of what was said is in the phrase. */
    private double match(Plain phrase, Plain said) {
        double phraseSaid = covered(phrase, said);
        boolean tooLittle = said.stems().size() == 1 && phraseSaid <= HALF;
        double match = phraseSaid * (0.4 + 0.6 * covered(said, phrase));
        return tooLittle ? Math.min(match, LEAST) : match;
    }

    private double covered(Plain of, Plain by) {
        double all = 0;
        double got = 0;
        for (String stem : of.stems()) {
            double weight = weights.getOrDefault(stem, strange(stem));
            all += weight;
            if (by.stems().contains(stem)) {
                got += weight;
            } else if (meaningsByStem.getOrDefault(stem, Set.of()).stream().anyMatch(by.meanings()::contains)) {
                got += NEARLY * weight;
            }
        }
        return all == 0 ? 0 : got / all;
    }

    /** What no symptom speaks of tells as much as a word of one symptom alone: of something else. */
    private double strange(String stem) {
        double alone = Math.log(1.0 + phrases.size());
        return meaningsByStem.containsKey(stem) ? 0 : trade.contains(stem) ? NOT_STRANGE * alone : alone;
    }

    /** One slip of the finger in a longer word that nobody says; hardly ever is it the first letter. */
    private Plain mended(Plain said) {
        Set<String> stems = new LinkedHashSet<>();
        for (String stem : said.stems()) {
            boolean strange =
                    stem.length() >= SHORTEST_SLIP && !weights.containsKey(stem) && !meaningsByStem.containsKey(stem);
            stems.add(strange ? slip(stem) : stem);
        }
        return new Plain(stems, said.meanings());
    }

    private String slip(String stem) {
        List<String> near = weights.keySet().stream()
                .filter(known -> known.length() >= SHORTEST_SLIP - 1
                        && known.charAt(0) == stem.charAt(0)
                        && Nearest.distance(stem, known) == 1)
                .sorted()
                .toList();
        return near.isEmpty() ? stem : near.getFirst();
    }
}
