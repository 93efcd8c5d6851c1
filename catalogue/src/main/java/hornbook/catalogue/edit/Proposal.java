package hornbook.catalogue.edit;

import hornbook.catalogue.entry.Problem;
import java.util.List;

/**
 * What saving a draft would do.
 *
 * @param kind as in commands
 * @param id as far as it has one
 * @param changes field by field; everything where it is new
 * @param problems those that set an entry aside, and remarks
 * @param fit whether it may be saved: no problem sets it aside, and something would change
 */
public record Proposal(
        String kind, String id, Standing standing, List<Difference> changes, List<Problem> problems, boolean fit) {

    /** Keeps its own copies. */
    public Proposal {
        changes = List.copyOf(changes);
        problems = List.copyOf(problems);
    }
}
