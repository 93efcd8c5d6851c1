/**
 * The question: which thread is this? From a diameter, a pitch and perhaps the angle to the standard threads it can be,
 * with their limits, tap drills, what looks like it and binds, and the next size that cleans up a stripped hole.
 *
 * <p>Ask {@link hornbook.shared.thread.WhichThread}. Here belongs what follows from published standards alone; which
 * drawer holds the screw, or what a model of horn usually has, does not. Called by commands and screens; calls only
 * {@code measure}.
 */
@NullMarked
package hornbook.shared.thread;

import org.jspecify.annotations.NullMarked;
