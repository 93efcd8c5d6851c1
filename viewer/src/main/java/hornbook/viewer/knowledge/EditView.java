package hornbook.viewer.knowledge;

import hornbook.catalogue.edit.Draft;
import hornbook.catalogue.edit.Proposal;
import org.jspecify.annotations.Nullable;

/**
 * What a form shows.
 *
 * @param draft as it now is
 * @param turn grows with each line that comes or goes, when the form has to be laid out anew
 * @param proposal what saving would do; null until it was first reckoned
 * @param origin what was told of where it comes from
 * @param busy whether it is being saved
 * @param leaving whether it is to be said once more that what was written may go
 * @param trouble why it was not saved, in a sentence
 */
record EditView(
        Draft draft,
        int turn,
        @Nullable Proposal proposal,
        Origin origin,
        boolean busy,
        boolean leaving,
        String trouble) {

    EditView drafting(Draft now, int turns) {
        return new EditView(now, turn + turns, proposal, origin, busy, false, "");
    }

    EditView proposing(Proposal now) {
        return new EditView(draft, turn, now, origin, busy, leaving, trouble);
    }

    EditView telling(Origin told) {
        return new EditView(draft, turn, proposal, told, busy, false, "");
    }

    EditView saving() {
        return new EditView(draft, turn, proposal, origin, true, false, "");
    }

    EditView asking() {
        return new EditView(draft, turn, proposal, origin, busy, true, "");
    }

    EditView troubled(String what) {
        return new EditView(draft, turn, proposal, origin, false, false, what);
    }

    boolean fit() {
        return !busy && proposal != null && proposal.fit();
    }
}
