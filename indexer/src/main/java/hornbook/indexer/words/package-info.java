/**
 * Words of a text: how it is cut and folded, how words are brought to a stem, and what a term of the trade means.
 *
 * <p>The same cutting serves records and queries, or they would not meet. What is made of the words (records, ranking)
 * does not belong here. The packages of the index and of the search call it.
 */
@NullMarked
package hornbook.indexer.words;

import org.jspecify.annotations.NullMarked;
