package hornbook.catalogue.hornmap;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A horn cup by cup.
 *
 * @param horn its number; empty for one that the books do not have
 * @param title what a person calls it
 * @param instrument as a value of {@code family-member}
 * @param job its job on the bench, missing while it has none: readings are written down under it
 * @param cups from the top of the tube down, those the instrument can have
 */
public record HornMap(
        String horn,
        String title,
        String instrument,
        @Nullable String job,
        List<CupLine> cups) {
    /** Keeps its own copy. */
    public HornMap {
        cups = List.copyOf(cups);
    }
}
