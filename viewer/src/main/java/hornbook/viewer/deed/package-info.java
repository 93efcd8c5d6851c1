/**
 * What was done last, below every screen, with the way to take it back at hand.
 *
 * <p>Here belongs the strip and what it knows. Not here: how a deed is taken back (the books do it). Whoever builds the
 * window makes it; no screen knows it, as the books tell it of every deed.
 */
@NullMarked
package hornbook.viewer.deed;

import org.jspecify.annotations.NullMarked;
