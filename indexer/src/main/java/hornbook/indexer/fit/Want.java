package hornbook.indexer.fit;

import java.util.List;
import java.util.Locale;

/** What a dimension has to be in the end. */
sealed interface Want {
    /** Both ends included, mm. */
    record Between(double low, double high) implements Want {
        double middle() {
            return (low + high) / 2;
        }

        @Override
        public boolean met(Value value) {
            return value instanceof Value.Amount(double mm, double doubt)
                    && mm - doubt >= low - Formula.NOTHING
                    && mm + doubt <= high + Formula.NOTHING;
        }

        @Override
        public String shown() {
            return high - low <= Formula.NOTHING ? Shown.number(low) : Shown.number(low) + " to " + Shown.number(high);
        }
    }

    /** One of these words. */
    record Among(List<String> words) implements Want {
        public Among {
            words = List.copyOf(words);
        }

        @Override
        public boolean met(Value value) {
            return words.stream().anyMatch(word -> plain(word).equals(plain(value.shown())));
        }

        private static String plain(String word) {
            return word.toLowerCase(Locale.ROOT).strip();
        }

        @Override
        public String shown() {
            return String.join(" or ", words);
        }
    }

    boolean met(Value value);

    /** For people, without a unit. */
    String shown();
}
