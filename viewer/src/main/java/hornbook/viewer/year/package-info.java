/**
 * The year in the shop, as a pane: what came in, hours, what was used, promises and quotes that did not hold, suppliers.
 *
 * <p>Here belong the pane, its plots and its view model. Not here: the reckoning (shared.year) and the printed page
 * (viewer.paper). The screen Jobs shows it.
 */
@NullMarked
package hornbook.viewer.year;

import org.jspecify.annotations.NullMarked;
