/**
 * Small pieces that several screens draw alike: a label in its brass frame, a lot in a line, a sentence.
 *
 * <p>Not here: anything that asks or remembers. Their colours stand in the window's style sheet.
 */
@NullMarked
package hornbook.viewer.widget;

import org.jspecify.annotations.NullMarked;
