/**
 * The words of the shop's books: one immutable record a kind, its parts in the order in which they are exchanged.
 *
 * <p>Here belong what the books hold and the two ways in which a person's request can fail. Not here: how records are
 * kept (store), what a trait or a model is (the catalogue's entries). Everybody may use these records.
 */
@NullMarked
package hornbook.shared.shop;

import org.jspecify.annotations.NullMarked;
