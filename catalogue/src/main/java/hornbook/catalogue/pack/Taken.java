package hornbook.catalogue.pack;

import hornbook.shared.store.Deed;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a pack changes here, or changed.
 *
 * @param deed absent for a dry run, and where nothing was to be changed
 * @param remarks what entries name and nobody here knows
 */
public record Taken(@Nullable Deed deed, List<Difference> entries, List<String> remarks) {
    /** Keeps its own copies. */
    public Taken {
        entries = List.copyOf(entries);
        remarks = List.copyOf(remarks);
    }
}
