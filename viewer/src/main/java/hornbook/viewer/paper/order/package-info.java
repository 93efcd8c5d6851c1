/**
 * What is ordered of a supplier, as a sheet to send.
 *
 * <p>Here belong its rows and heads. Not here: what runs out. Commands and screens may call it.
 */
@NullMarked
package hornbook.viewer.paper.order;

import org.jspecify.annotations.NullMarked;
