/**
 * Who sells to the shop: a list of them, one of them open, and what is written down of it.
 *
 * <p>Here belong the pane and its view model. Not here: what to order and goods in (the screen Restock, which shows this
 * pane).
 */
@NullMarked
package hornbook.viewer.supply;

import org.jspecify.annotations.NullMarked;
