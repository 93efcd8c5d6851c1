package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Nearest;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;

/** A name as read off a horn, compared with names that are known. */
final class NameRead {
    private static final int LETTERS_FOR_A_SLIP = 5;

    private final List<String> words;

    NameRead(String text) {
        this.words = words(text);
    }

    /** Letters wrong if this name is meant: the whole text or a run of its words; empty if it cannot be meant. */
    OptionalInt slips(String name) {
        List<String> wanted = words(name);
        String whole = String.join(" ", wanted);
        int most = whole.length() / LETTERS_FOR_A_SLIP;
        int best = Integer.MAX_VALUE;
        for (int i = 0; i + wanted.size() <= words.size() && !wanted.isEmpty(); i++) {
            String run = String.join(" ", words.subList(i, i + wanted.size()));
            best = Math.min(best, Nearest.distance(run, whole));
        }
        return best <= most ? OptionalInt.of(best) : OptionalInt.empty();
    }

    private static List<String> words(String text) {
        String plain = Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", " ")
                .trim();
        return Arrays.stream(plain.split(" ")).filter(w -> !w.isEmpty()).toList();
    }
}
