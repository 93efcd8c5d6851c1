/**
 * Pages in true millimetres: text that breaks and flows, drawings, and the PDF they become.
 *
 * <p>Here belongs what every printed sheet is made of. Not here: what a sheet says (a package each: brief, labels, orders
 * and others), which printer is used. Customers are never known here.
 */
@NullMarked
package hornbook.viewer.paper;

import org.jspecify.annotations.NullMarked;
