/**
 * The question: what lies where, and what is really in it?
 *
 * <p>Here belong the cards of a drawer, a place and a lot, and the deeds that move stock. Not here: what a part is good
 * for (the catalogue), where to look for it (the index), what to order (restock). The viewer asks.
 */
@NullMarked
package hornbook.shared.stock;

import org.jspecify.annotations.NullMarked;
