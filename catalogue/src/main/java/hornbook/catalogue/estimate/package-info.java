/**
 * The question: how long will it take?
 *
 * <p>Here belong the spread of past clocks over task, instrument, make, model, person and job, and the minutes that a
 * list of tasks may take from it. Not here: prices and paper (the viewer), what the tasks are (entries).
 */
@NullMarked
package hornbook.catalogue.estimate;

import org.jspecify.annotations.NullMarked;
