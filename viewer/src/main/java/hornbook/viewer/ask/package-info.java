/**
 * A small question that the window asks before it does something: a few fields, Enter, Esc.
 *
 * <p>Here belong the question, its answers and the form that shows it. Not here: what is done with the answers. Screens
 * ask with it.
 */
@NullMarked
package hornbook.viewer.ask;

import org.jspecify.annotations.NullMarked;
