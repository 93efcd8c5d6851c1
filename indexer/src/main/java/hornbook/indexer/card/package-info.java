/**
 * Cards: what of each record can be found, and how strongly each text, name, link and size of it speaks.
 *
 * <p>Here belongs what a lot, a job or an entry says and what it stands beside. How cards are kept belongs to the
 * index, how they are ranked to the search. The index alone makes cards.
 */
@NullMarked
package hornbook.indexer.card;

import org.jspecify.annotations.NullMarked;
