/**
 * What the sheets that go to an owner say of a job, put together from the books and what a person told.
 *
 * <p>Here belong the quote and the hand-back as they will be printed. Not here: how they look on paper (viewer.paper), how
 * long work takes and what it costs (catalogue.estimate). Commands and the screen Jobs print with it.
 */
@NullMarked
package hornbook.viewer.sheet;

import org.jspecify.annotations.NullMarked;
