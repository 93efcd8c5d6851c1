/**
 * Where the program starts. Main alone stands here and puts the rest together.
 *
 * <p>Not here: what builds the services (workshop), what reads a command line (cli), what is drawn (window and the
 * screens). Nobody knows this package.
 */
@NullMarked
package hornbook.viewer;

import org.jspecify.annotations.NullMarked;
