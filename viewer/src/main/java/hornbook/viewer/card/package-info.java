/**
 * Cards: what a record says when it is opened, as blocks of words, and the pane that draws them.
 *
 * <p>Here belongs how a drawer, lot, job, horn or entry is laid out to be read. Not here: what they say (the books and
 * the catalogue do), how they were found. Screens that open records use it.
 */
@NullMarked
package hornbook.viewer.card;

import org.jspecify.annotations.NullMarked;
