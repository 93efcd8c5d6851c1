/**
 * How honest past estimates were, as a picture: each closed job estimated from those before it, held against what it took.
 *
 * <p>Here belong the pane, its plots and its view model. Not here: the reckoning (catalogue.estimate). The screen Jobs
 * shows it.
 */
@NullMarked
package hornbook.viewer.honesty;

import org.jspecify.annotations.NullMarked;
