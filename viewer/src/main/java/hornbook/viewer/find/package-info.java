/**
 * The screen Find: what the search box finds as one types, sorted into groups for the eye, and the card of what is
 * opened.
 *
 * <p>Here belong the screen and its view model. Not here: how anything is found (the index does that) or laid out as a
 * card. Whoever builds the window makes it.
 */
@NullMarked
package hornbook.viewer.find;

import org.jspecify.annotations.NullMarked;
