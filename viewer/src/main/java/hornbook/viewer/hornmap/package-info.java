/**
 * The screen Horn map: our own schematic saxophone with its pad cups, on which sizes, openings and findings are read and
 * entered.
 *
 * <p>Here belong the screen, its view model, and the drawing with its cups, which other screens may show too. Not here:
 * what is known of a horn (the catalogue answers), how the horn is drawn (picture). Whoever builds the window makes it.
 */
@NullMarked
package hornbook.viewer.hornmap;

import org.jspecify.annotations.NullMarked;
