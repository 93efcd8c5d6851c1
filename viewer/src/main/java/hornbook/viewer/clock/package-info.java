/**
 * The clocks of the bench, at hand from every screen: what runs, starting and stopping with three keys, what is done
 * soaking.
 *
 * <p>Here belong the strip below the screens, its view model, and which tasks are offered first. Not here: what a clock
 * writes down (shared.job). Whoever builds the window makes it; the screen Jobs starts clocks through it.
 */
@NullMarked
package hornbook.viewer.clock;

import org.jspecify.annotations.NullMarked;
