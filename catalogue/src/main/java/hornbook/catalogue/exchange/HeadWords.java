package hornbook.catalogue.exchange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What a title may call the thing, the most exact first: “blued needle springs 0.9 mm” is a blued needle spring, and a
 * needle spring. What a thing is stands last in English, before a comma, a size, or what it is for. One word alone says
 * it only beside colours and the like: a silver steel rod is stock, and no hinge rod.
 */
final class HeadWords {
    private static final Pattern SIZE = Pattern.compile(
            "(?<![\\p{L}\\d])[#.]?\\d[\\d./-]*(?: ?(?:mm|in|inch|inches|thou|cm|m|\"|g|ml))?(?![\\p{L}\\d])|\\bm\\d\\S*");

    private static final Pattern AFTER = Pattern.compile("[,;(:]");

    /** Says how a thing looks or in what state it is, and never what it is. */
    private static final Set<String> PLAIN = Set.of(
            ("tan brown white black red blue green grey gray dark light natural blued plain new old used spare assorted"
                            + " mixed small large big thin thick leather kid bladder")
                    .split(" "));

    /** After one of these it is said what the thing is for, or of: that would be taken for the thing. */
    private static final Set<String> LINKS =
            Set.of("with", "for", "from", "off", "of", "in", "on", "to", "at", "under", "and", "or", "without");

    private HeadWords() {}

    static List<String> of(String title) {
        String head = AFTER.split(title.strip().toLowerCase(Locale.ROOT), 2)[0];
        List<String> words = Arrays.stream(
                        SIZE.matcher(head).replaceAll(" ").strip().split("\\s+"))
                .filter(word -> !word.isEmpty())
                .toList();
        if (words.stream().anyMatch(LINKS::contains)) {
            return List.of();
        }
        List<String> said = new ArrayList<>();
        say(words, said);
        say(bare(words), said);
        for (int from = 1; from < words.size() - 1; from++) {
            say(words.subList(from, words.size()), said);
        }
        return said;
    }

    /** Without plain words before and after. */
    private static List<String> bare(List<String> words) {
        int from = 0;
        int to = words.size();
        while (from < to && PLAIN.contains(words.get(from))) {
            from++;
        }
        while (to > from && PLAIN.contains(words.get(to - 1))) {
            to--;
        }
        return words.subList(from, to);
    }

    private static void say(List<String> words, List<String> said) {
        String phrase = String.join(" ", words);
        // One of them first: a lot of tan pads is single pads, and no set.
        if (phrase.endsWith("s") && !phrase.endsWith("ss")) {
            said.add(phrase.substring(0, phrase.length() - 1));
        }
        said.add(phrase);
    }
}
