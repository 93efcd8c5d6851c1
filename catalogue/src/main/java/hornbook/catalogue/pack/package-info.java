/**
 * The question: how does knowledge go from shop to shop? A pack is a zip file of the shop's own entries and nothing else.
 *
 * <p>Here belong making a pack, without anything that points to a customer or to a job of this shop, and taking one, as
 * one deed and all or nothing. Not here: what an entry may say (entry), whole exports of the books (shared.exchange). The
 * viewer asks.
 */
@NullMarked
package hornbook.catalogue.pack;

import org.jspecify.annotations.NullMarked;
