/**
 * The window round the screens: search box on top, rail at the left, keyboard, colours, type.
 *
 * <p>Here belongs what is the same whatever screen is shown, and what a screen must be. Not here: any screen, any
 * question to the shop. Screens know this package; it knows none of them.
 */
@NullMarked
package hornbook.viewer.window;

import org.jspecify.annotations.NullMarked;
