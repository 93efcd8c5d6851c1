/**
 * What is wrong with the horn in hand: a pane that the Bench and Jobs show beside it.
 *
 * <p>Here belong the pane, its view model and what it asks for: causes, the next check with its tools and where they
 * lie, the cure with its cautions and minutes. Not here: the odds and the order of checks (catalogue.diagnose), what a
 * job's list of work is (viewer.jobs). The screens Bench and Jobs make it.
 */
@NullMarked
package hornbook.viewer.diagnose;

import org.jspecify.annotations.NullMarked;
