/**
 * Writing down knowledge: what a kind of entry asks for, a draft of one, what saving it would change, and the deed.
 *
 * <p>Here belongs what an editor or a command needs to make, change and take away the shop's own entries. Not here: what an
 * entry is and when it is right (that is {@link hornbook.catalogue.entry}), how a form looks.
 */
@NullMarked
package hornbook.catalogue.edit;

import org.jspecify.annotations.NullMarked;
