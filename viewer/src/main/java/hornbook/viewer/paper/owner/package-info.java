/**
 * What an owner is given or signs: the quote, and what goes back with the horn.
 *
 * <p>Here belong their wording and blanks to fill in. Not here: how long work takes, what was done (callers bring it). Commands and screens may call it.
 */
@NullMarked
package hornbook.viewer.paper.owner;

import org.jspecify.annotations.NullMarked;
