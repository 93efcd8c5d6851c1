/**
 * The drawings of what to look at on a horn, printed.
 *
 * <p>Here belong how many stand on a page and what stands below each. Not here: the drawings themselves. Commands and screens may call it.
 */
@NullMarked
package hornbook.viewer.paper.plate;

import org.jspecify.annotations.NullMarked;
