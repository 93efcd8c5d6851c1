/**
 * The demonstration shop: an export folder among the program's resources, taken in like any other.
 *
 * <p>Not here: what is asked of it. Commands and the first-start screen make it.
 */
@NullMarked
package hornbook.viewer.demo;

import org.jspecify.annotations.NullMarked;
