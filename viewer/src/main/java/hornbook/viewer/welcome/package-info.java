/**
 * The first start: there is no shop yet, and one is made, tried out, or brought in.
 *
 * <p>Here belong the choice and what is said when it fails. Not here: how a shop is made or filled. Whoever builds the
 * window makes it.
 */
@NullMarked
package hornbook.viewer.welcome;

import org.jspecify.annotations.NullMarked;
