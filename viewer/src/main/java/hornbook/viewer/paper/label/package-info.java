/**
 * Labels for drawers in true millimetres, each with the code that opens its drawer, and the ruler that checks the printer.
 *
 * <p>Here belong the cells of a sheet and what stands in one. Not here: which drawers there are. Commands and screens may call it.
 */
@NullMarked
package hornbook.viewer.paper.label;

import org.jspecify.annotations.NullMarked;
