/**
 * The question: how was the year in the shop?
 *
 * <p>Here belong what came in and was handed back, the hours by kind of work, what was used and what it cost, promises
 * and quotes that did not hold, and how long suppliers took: the books alone. Not here: what tasks and parts are called
 * (entries), how honest the estimates were (estimate), paper (the viewer). Begin with {@link hornbook.shared.year.Year}.
 */
@NullMarked
package hornbook.shared.year;

import org.jspecify.annotations.NullMarked;
