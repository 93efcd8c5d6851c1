package hornbook.catalogue.identify;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An entry that the horn may be.
 *
 * @param id of the model
 * @param years when it was made if it is this one; missing where nothing is known
 * @param why what each answer did, strongest first
 */
public record Candidate(
        String id,
        String title,
        double probability,
        @Nullable YearSpan years,
        List<Reason> why) {
    /** Keeps its own copy. */
    public Candidate {
        why = List.copyOf(why);
    }
}
