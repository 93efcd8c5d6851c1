package hornbook.catalogue.identify;

import java.util.List;

/**
 * How likely a quirk bites on the horn asked about.
 *
 * @param quirk id
 * @param probability over all entries and unlisted
 * @param settledBy ids of traits not yet looked at that it turns on, the one that would tell most first
 */
public record QuirkChance(String quirk, double probability, List<String> settledBy) {
    /** Keeps its own copy. */
    public QuirkChance {
        settledBy = List.copyOf(settledBy);
    }
}
