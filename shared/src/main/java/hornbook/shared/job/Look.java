package hornbook.shared.job;

import hornbook.shared.shop.Plainly;
import org.jspecify.annotations.Nullable;

/**
 * Something seen or measured on a job.
 *
 * @param what a trait, a finding, a fault or a quirk
 * @param where on the horn, as a cup or key; empty for the whole
 * @param value as read, nothing taken off
 * @param left is it as left, and not as found
 * @param tool what it was read with
 */
public record Look(
        String what,
        String where,
        String value,
        String unit,
        boolean left,
        @Nullable String tool,
        String note) {

    /** As a deed is called: {@code key height 9.1 mm of cup-f}. */
    String title() {
        String read = (value + " " + unit).strip();
        return Plainly.said(what)
                + (read.equals("found") ? "" : " " + read)
                + (where.isEmpty() ? "" : " of " + Plainly.said(where));
    }
}
