/**
 * The screen Drawers: each cabinet as it stands in the shop, its labels as written, and what is found behind them.
 *
 * <p>Here belong the screen and its view model. Not here: what lies where (the books answer that), the paper labels.
 * Whoever builds the window makes it; other screens reach it only through what they are handed.
 */
@NullMarked
package hornbook.viewer.drawers;

import org.jspecify.annotations.NullMarked;
