/**
 * The year in the shop on paper, with its plots.
 *
 * <p>Here belong plots drawn in millimetres and the words beside them. Not here: what the year was (callers bring it). Commands and screens may call it.
 */
@NullMarked
package hornbook.viewer.paper.year;

import org.jspecify.annotations.NullMarked;
