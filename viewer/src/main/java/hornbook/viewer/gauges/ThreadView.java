package hornbook.viewer.gauges;

import hornbook.shared.thread.ThreadAnswer;
import org.jspecify.annotations.Nullable;

/**
 * What the thread pane shows.
 *
 * @param overlay the look-alike laid over it, where one binds
 * @param trouble which field cannot be read, and why
 */
record ThreadView(
        ThreadAsked asked,
        @Nullable ThreadAnswer answer,
        @Nullable Overlay overlay,
        @Nullable String trouble) {
    static final ThreadView NOTHING = new ThreadView(ThreadAsked.NOTHING, null, null, null);
}
