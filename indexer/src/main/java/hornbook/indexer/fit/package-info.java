/**
 * Can something I have be made to fit: which lot, by which work, in how many minutes, without spoiling something better.
 *
 * <p>Reads the shop's lots and tools and the entries of operations and kinds; operations, kinds, checks and limits are
 * data, so a new one is an entry and no code. Flow: the question's words, pieces of the kind and its blanks, for each
 * the cheapest order of work (an exact search over finitely many ends), then reasons for those refused and what to buy.
 * Not here: which thread a screw has ({@link hornbook.shared.thread}), which pads go where. Commands and screens may
 * ask {@link hornbook.indexer.fit.Fit}.
 */
@NullMarked
package hornbook.indexer.fit;

import org.jspecify.annotations.NullMarked;
