/**
 * The screen Jobs: horns on the bench at once, and one job in view from taking in to handing back.
 *
 * <p>Here belong the screen, its view model, what it asks for and what it does with the answers. Not here: what is
 * written down (shared.job, shared.stock), how long work takes (the catalogue estimates), the clock's keys
 * (viewer.clock). Whoever builds the window makes it.
 */
@NullMarked
package hornbook.viewer.jobs;

import org.jspecify.annotations.NullMarked;
