/**
 * The screen In &amp; out: people's own lists and whole exports come in, everything goes out.
 *
 * <p>Here belong the steps a person is led through and their view model. Not here: how a list is read (the books'
 * exchange does it, the same for the dry run and the real one). Whoever builds the window makes it.
 */
@NullMarked
package hornbook.viewer.exchange;

import org.jspecify.annotations.NullMarked;
