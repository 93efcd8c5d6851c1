/**
 * The screen Restock: what runs out and why, from whom to order, what is on its way, goods in.
 *
 * <p>The model knows no widget: it asks for the list beside the window, and does deeds one after the other. Not here: how
 * anything is reckoned, and what an order looks like on paper; that is for shared.restock and viewer.paper.order.
 */
@NullMarked
package hornbook.viewer.restock;

import org.jspecify.annotations.NullMarked;
