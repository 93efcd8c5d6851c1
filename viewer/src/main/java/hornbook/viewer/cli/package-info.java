/**
 * Commands: the program as it is asked from a line of text.
 *
 * <p>Here belong one class a command, and the frame they share: options, the folders in use, the one JSON mapper, how
 * an error becomes a line and an exit code. Not here: answers (the services give them), JavaFX in any form. Only Main
 * calls in here.
 */
@NullMarked
package hornbook.viewer.cli;

import org.jspecify.annotations.NullMarked;
