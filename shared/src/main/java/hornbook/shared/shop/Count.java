package hornbook.shared.shop;

import java.util.Locale;
import java.util.Optional;

/** How many there are: a number held by the ledger, or a word that is never turned into a number silently. */
public sealed interface Count {
    Count ZERO = new Exact(0);

    /** Pieces, by the ledger. */
    record Exact(int pieces) implements Count {
        @Override
        public String written() {
            return Integer.toString(pieces);
        }
    }

    /** By eye: few is 1 to 5, some 6 to 20, plenty over 20 (common practice). */
    enum Rough implements Count {
        FEW,
        SOME,
        PLENTY;

        @Override
        public String written() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** As it stands in the exchange file. */
    String written();

    /** Is there surely nothing? */
    default boolean none() {
        return this instanceof Exact(int pieces) && pieces <= 0;
    }

    /** A count as written, or nothing where the text is neither a whole number nor one of the words. */
    static Optional<Count> read(String text) {
        for (Rough rough : Rough.values()) {
            if (rough.written().equals(text)) {
                return Optional.of(rough);
            }
        }
        try {
            return Optional.of(new Exact(Integer.parseInt(text)));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
