package hornbook.indexer.brief;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something to bring to the bench.
 *
 * @param what id of the kind of tool, part or supply
 * @param kind tool, part or supply
 * @param lot id of the lot; missing for a tool, and where there is none
 * @param drawer id of the drawer or place; missing where the shop has none
 * @param label of the drawer as written, or the place's name
 * @param onHand a number, or few, some or plenty; 0 where there is none
 * @param substitute true where it is not quite what is wanted: measure before it is used
 * @param note what to mind
 * @param wantedBy ids of the quirks that want it; none where it is a spare for this model
 */
public record Fetch(
        String what,
        String title,
        String kind,
        @Nullable String lot,
        @Nullable String drawer,
        @Nullable String label,
        String onHand,
        boolean substitute,
        @Nullable String note,
        List<String> wantedBy) {
    /** Keeps its own copy. */
    public Fetch {
        wantedBy = List.copyOf(wantedBy);
    }
}
