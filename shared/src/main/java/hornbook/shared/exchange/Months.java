package hornbook.shared.exchange;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Months by name, as English, German, French, Spanish and Italian programs shorten them (from memory). */
final class Months {
    private static final List<Set<String>> SHORT = List.of(
            Set.of("jan", "janv", "ene", "gen", "jän"),
            Set.of("feb", "févr", "fév"),
            Set.of("mar", "mär", "mrz", "mars", "märz"),
            Set.of("apr", "avr", "abr"),
            Set.of("may", "mai", "mag"),
            Set.of("jun", "juin", "giu", "june", "juni"),
            Set.of("jul", "juil", "lug", "july", "juli"),
            Set.of("aug", "août", "ago"),
            Set.of("sep", "sept", "set"),
            Set.of("oct", "okt", "ott"),
            Set.of("nov"),
            Set.of("dec", "dez", "déc", "dic"));

    private Months() {}

    /** 1 to 12, where the word is a month's short name. */
    static Optional<Integer> shortened(String word) {
        String folded = word.toLowerCase(Locale.ROOT);
        for (int i = 0; i < SHORT.size(); i++) {
            if (SHORT.get(i).contains(folded)) {
                return Optional.of(i + 1);
            }
        }
        return Optional.empty();
    }

    /** 1 to 12, where the word is a month's name, whole or shortened. */
    static Optional<Integer> named(String word) {
        Optional<Integer> exact = shortened(word);
        return exact.isPresent() || word.length() < 3 ? exact : shortened(word.substring(0, 3));
    }
}
