package hornbook.viewer.gauges;

import hornbook.shared.pads.PadAnswer;
import org.jspecify.annotations.Nullable;

/**
 * What the pads pane shows.
 *
 * @param answer over all open jobs with measured cups; empty lists where none has any
 */
record PadsView(
        boolean reserve,
        @Nullable PadAnswer answer,
        @Nullable String trouble) {
    static final PadsView NOTHING = new PadsView(false, null, null);
}
