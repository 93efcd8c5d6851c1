package hornbook.viewer.knowledge;

import hornbook.catalogue.entry.Kind;
import java.util.Locale;

/** What a person calls the kinds of entry. */
final class KindNames {
    private KindNames() {}

    static String one(Kind kind) {
        return switch (kind) {
            case USE_ON -> "use on a surface";
            case SPRING -> "spring choice";
            case STATEMENT -> "hazard statement";
            case ALLOY -> "solder or alloy";
            default -> kind.word();
        };
    }

    static String many(Kind kind) {
        String one = one(kind);
        String plural = switch (kind) {
            case SUPPLY -> "supplies";
            case USE_ON -> "may I use\u2026";
            case ALLOY -> "solders and alloys";
            default -> one + "s";
        };
        return plural.substring(0, 1).toUpperCase(Locale.ROOT) + plural.substring(1);
    }
}
