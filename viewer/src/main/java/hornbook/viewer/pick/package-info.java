/**
 * One of many: a list to choose from with a digit, the arrows, or a few letters.
 *
 * <p>Here belong the choice and the pane that shows it. Not here: where the options come from and what is done with the
 * chosen one. Screens choose with it.
 */
@NullMarked
package hornbook.viewer.pick;

import org.jspecify.annotations.NullMarked;
