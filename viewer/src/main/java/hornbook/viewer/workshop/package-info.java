/**
 * The only place that builds services: it opens the shop, the knowledge and the index, and hands each command and
 * screen the one service it asks.
 *
 * <p>A package of its own, below commands and screens, so that both can be given it without a circle. Not here: any
 * answer, any widget.
 */
@NullMarked
package hornbook.viewer.workshop;

import org.jspecify.annotations.NullMarked;
