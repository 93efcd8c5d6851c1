/**
 * The shipped line drawings: what a value of a trait looks like, where to look for it, the horn and its cups.
 *
 * <p>Here belong the pictures, the small part of SVG they keep to, and the list of traits that are drawn. Not
 * here: colours and drawing on a screen or page (a picture names its pens, the caller holds the paint), nor
 * photographs a shop takes. Screens and printing may call it; it knows no toolkit.
 */
@NullMarked
package hornbook.catalogue.picture;

import org.jspecify.annotations.NullMarked;
