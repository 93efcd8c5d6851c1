/**
 * The question of the search box: reads a query as a repairer writes it, ranks what the index holds, says why.
 *
 * <p>Here belong the query language, ranking and reasons. Not here: what a record says of itself (cards) and how the
 * index is kept. The screens and commands call {@link hornbook.indexer.search.Search}.
 */
@NullMarked
package hornbook.indexer.search;

import org.jspecify.annotations.NullMarked;
