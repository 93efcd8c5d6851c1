/**
 * The question: what is wrong, and what to look at first?
 *
 * <p>Here belong reading a player's words as symptoms, the odds of their causes as this shop has found them, the order of
 * checks that finds the cause in the fewest minutes, and when to stop and ask. Not here: what faults there are (entries),
 * how long the cure takes (estimate). Commands and screens ask {@link Diagnose}.
 */
@NullMarked
package hornbook.catalogue.diagnose;

import org.jspecify.annotations.NullMarked;
