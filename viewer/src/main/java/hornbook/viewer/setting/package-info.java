/**
 * How the shop is set, in the window: every setting with its meaning, in one place.
 *
 * <p>Here belong the pane and its view model. Not here: what settings there are and what may be written (shared.setting),
 * how the window looks (viewer.window). The screen In and out shows it.
 */
@NullMarked
package hornbook.viewer.setting;

import org.jspecify.annotations.NullMarked;
