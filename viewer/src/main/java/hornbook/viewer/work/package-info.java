/**
 * Work beside the window: a question becomes a task with progress, an answer and a way to cancel it.
 *
 * <p>Here belong the threads and who may run when. Not here: any question, any widget. Window and screens use it.
 */
@NullMarked
package hornbook.viewer.work;

import org.jspecify.annotations.NullMarked;
