/**
 * From whom, how soon, and whether again: what the books say of a supplier and of a quality of goods.
 *
 * <p>Here belong the days of past deliveries and the verdicts on suppliers and lots, read by every question that ends in
 * an order. Not here: what to order and when (restock), which pad goes where (pads).
 */
@NullMarked
package hornbook.shared.supply;

import org.jspecify.annotations.NullMarked;
