package hornbook.catalogue.identify;

import hornbook.shared.shop.Horn;
import java.util.Locale;
import java.util.stream.Stream;

/** By what a horn was made out, as its record says it. */
public enum Confirmation {
    /** A bill, a works list, a letter. */
    PAPER("paper"),
    /** The maker's own name on it. */
    NAME("name on bell"),
    /** Seen from inside. */
    TAKEN_APART("taken apart"),
    /** Looked up by what was seen, as this program does. */
    TRAITS("traits");

    private final String words;

    Confirmation(String words) {
        this.words = words;
    }

    /** As it stands in the books. */
    public String words() {
        return words;
    }

    /** Was the horn made out by something other than looking up its traits? Only such horns test the reckoning. */
    static boolean independent(Horn horn) {
        String by = horn.identifiedBy().toLowerCase(Locale.ROOT);
        return Stream.of("paper", "name", "apart").anyMatch(by::contains) && !by.contains("against the name");
    }

    static boolean sure(Horn horn) {
        return horn.sureness().equals("sure");
    }
}
