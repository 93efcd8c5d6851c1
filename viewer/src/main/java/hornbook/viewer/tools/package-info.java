/**
 * The tools of the shop: where each is, and what is missing from, lent out of or worn in a set.
 *
 * <p>Here belong the list and the pane of one tool, with their view model. Not here: what a tool is good for (the
 * catalogue). The screen Drawers shows it.
 */
@NullMarked
package hornbook.viewer.tools;

import org.jspecify.annotations.NullMarked;
