package hornbook.catalogue.edit;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Kind;
import java.text.Normalizer;
import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Makes an id out of a title, so that nobody has to think of one. */
final class Ids {
    private static final int LONGEST = 60;

    private Ids() {}

    /** Begins as the others of its kind do, and is free; empty where the title has no letter. */
    static String of(Kind kind, String title, Catalogue catalogue) {
        String slug = slug(title);
        if (slug.isEmpty()) {
            return "";
        }
        String id = beginning(kind, catalogue.all(kind).keySet()) + slug;
        String free = id;
        for (int i = 2; catalogue.entry(free).isPresent(); i++) {
            free = id + "-" + i;
        }
        return free;
    }

    private static String slug(String title) {
        String plain = Normalizer.normalize(title, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
        String slug = plain.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        return slug.substring(0, Math.min(slug.length(), LONGEST)).replaceAll("(^-|-$)", "");
    }

    /** What most ids of the kind begin with, where most begin alike: {@code q-}, {@code part-}. */
    private static String beginning(Kind kind, Collection<String> ids) {
        Map<String, Long> counts = ids.stream()
                .filter(id -> id.indexOf('-') > 0)
                .map(id -> id.substring(0, id.indexOf('-') + 1))
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        return counts.entrySet().stream()
                .max(Comparator.comparingLong(Map.Entry::getValue))
                .filter(most -> 2 * most.getValue() > ids.size())
                .map(Map.Entry::getKey)
                .orElseGet(() -> usual(kind));
    }

    /** Kinds of which a shop may have none yet. */
    private static String usual(Kind kind) {
        return switch (kind) {
            case MAKE -> "k-";
            case MODEL -> "m-";
            case SELLER -> "s-";
            default -> "";
        };
    }
}
