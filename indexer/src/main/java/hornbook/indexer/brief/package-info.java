/**
 * Before a screw is turned: what will bite, what to fetch and from which drawer, how it went last time.
 *
 * <p>Reads the shop's books and the entries, and asks what horn it is ({@link hornbook.catalogue.identify.Identify})
 * and what may not be used on it ({@link hornbook.catalogue.may.May}); it is the one package that asks other
 * questions. Flow: posterior over entries, quirks by relevance, what they want, lots and tools that are it. Not here:
 * how a brief is printed or drawn. Commands, paper and screens may ask.
 */
@NullMarked
package hornbook.indexer.brief;

import org.jspecify.annotations.NullMarked;
