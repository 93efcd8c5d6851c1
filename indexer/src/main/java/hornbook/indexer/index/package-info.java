/**
 * The index of a shop: made of cards, kept in step with the books, thrown away and made again whenever in doubt.
 *
 * <p>Here belong how a card becomes an index document, what the index holds, and how it is opened, followed and rebuilt.
 * What a query means and how hits are ranked belongs to the search, the only package that may look inside.
 */
@NullMarked
package hornbook.indexer.index;

import org.jspecify.annotations.NullMarked;
