/**
 * Entries by what people call them: an id, a title, another name, a word of the trade, or the half of it; and the lines
 * of a job with names in the place of ids.
 *
 * <p>Here belongs what a typed name means where one entry of a known sort is asked for. Not here: the search box, which
 * ranks whatever a text may mean, and names on a person's list, of which only the plain ones are taken.
 */
@NullMarked
package hornbook.catalogue.called;

import org.jspecify.annotations.NullMarked;
