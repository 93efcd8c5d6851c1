/**
 * What is printed: pages in true millimetres, drawer labels, the sheet of all drawings, running text.
 *
 * <p>Here belong the layout of a page and the PDF it becomes. Not here: what is asked of the shop (callers bring the
 * records), which printer is used. Customers are never known here. Commands and screens may call it.
 */
@NullMarked
package hornbook.viewer.paper;

import org.jspecify.annotations.NullMarked;
