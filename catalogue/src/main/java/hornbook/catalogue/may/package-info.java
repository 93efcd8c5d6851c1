/**
 * May I use this on that?
 *
 * <p>One question of the entries that say what a supply, tool, operation or process does to a finish, a body, a pearl,
 * a pad. Of several that hold the hardest wins, a trait not looked at counts as the worst it can be, and where no entry
 * says anything the answer is that it is not known, never that it is allowed. Not here: what horn it is, and which
 * drawer the thing lies in. Screens, commands and brief may ask.
 */
@NullMarked
package hornbook.catalogue.may;

import org.jspecify.annotations.NullMarked;
