package hornbook.catalogue.diagnose;

import hornbook.catalogue.entry.Everyday;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Cuts what a player says into stems and everyday meanings; {@code G sharp}, {@code G♯} and {@code Gis} are one key. */
final class PlainWords {
    private static final Pattern SHARP = Pattern.compile("\\b([a-g])(?: sharp|is\\b|♯)");
    private static final Pattern FLAT = Pattern.compile("\\b([a-g])(?: flat\\b|♭)");
    /** A small a alone is an article; a capital A is a key. */
    private static final Pattern ARTICLE =
            Pattern.compile("(?<![\\p{L}\\p{N}])a(?![\\p{L}\\p{N}#♯♭])(?! (?:flat|sharp))");

    private static final Pattern APOSTROPHE = Pattern.compile("['’]");
    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}#]+");
    private static final Pattern ACCENT = Pattern.compile("\\p{M}");
    private static final Pattern ENDING = Pattern.compile("(?:ings?|edly|ed|ly|es|(?<!s)s|e|y)$");
    private static final int SHORTEST_STEM = 3;
    /** Says nothing of what is wrong. */
    private static final Set<String> SILENT = Set.of("""
            the an and of on in at to from with when is it its my has have i be was that this for by
            or as like wants want will what whatever once sax me you he she they we are am do does
            did could would should may so if then than there here some something any just very
            really much more most always never again now still ever only about after before while
            because but how why who where which these those gets got getting go goes going make
            makes made keep keeps feel feels sound sounds seem seems say says said saxophone horn
            """.split("\\s+"));

    private final Map<String, String> meanings = new HashMap<>();

    PlainWords() {
        Everyday.each((word, group) -> meanings.put(String.join(" ", cut(word)), group));
    }

    /**
     * A text read.
     *
     * @param stems in order
     * @param meanings everyday groups that some words of it belong to
     */
    record Plain(Set<String> stems, Set<String> meanings) {}

    Plain read(String text) {
        List<String> words = cut(text);
        Set<String> stems = new LinkedHashSet<>();
        words.stream().filter(word -> !SILENT.contains(word)).forEach(word -> stems.add(stem(word)));
        String joined = " " + String.join(" ", words) + " ";
        Set<String> groups = new HashSet<>();
        meanings.forEach((phrase, group) -> {
            if (joined.contains(" " + phrase + " ")) {
                groups.add(group);
            }
        });
        return new Plain(stems, groups);
    }

    /** The everyday meanings of one stem. */
    Map<String, Set<String>> meaningsByStem() {
        Map<String, Set<String>> byStem = new HashMap<>();
        meanings.forEach((phrase, group) -> {
            if (phrase.indexOf(' ') < 0) {
                byStem.computeIfAbsent(stem(phrase), s -> new HashSet<>()).add(group);
            }
        });
        return byStem;
    }

    private static List<String> cut(String text) {
        String folded = APOSTROPHE.matcher(text.strip()).replaceAll("");
        folded = ARTICLE.matcher(folded).replaceAll(" ").toLowerCase(Locale.ROOT);
        folded = FLAT.matcher(SHARP.matcher(folded).replaceAll("$1#")).replaceAll("$1b");
        folded = ACCENT.matcher(Normalizer.normalize(folded, Normalizer.Form.NFD))
                .replaceAll("");
        List<String> words = new ArrayList<>();
        for (String word : BETWEEN.split(folded)) {
            if (!word.isEmpty()) {
                words.add(word);
            }
        }
        return words;
    }

    /** Endings off, so that burbles, burbled and burbling are one; no dictionary is needed for that. */
    static String stem(String word) {
        String cut = ENDING.matcher(word).replaceFirst("");
        return cut.length() < SHORTEST_STEM ? word : cut;
    }
}
