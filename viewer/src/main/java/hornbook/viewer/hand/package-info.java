/**
 * An open drawer or place in a person's hands: what lies in it is counted, taken out, put in, moved, put right.
 *
 * <p>Here belong what can be done, the questions asked before, and the panel. Not here: the cabinets round it (the
 * screen Drawers), what a deed writes (the books).
 */
@NullMarked
package hornbook.viewer.hand;

import org.jspecify.annotations.NullMarked;
