/**
 * The screen Knowledge: what is known, kind by kind, with its source; and the shop's own entries written down, changed and
 * taken away, in a form made from the schema of their kind.
 *
 * <p>The models know no widget and ask one service. Not here: what an entry is, when it is right, what saving it changes
 * (the catalogue says that); how a card is drawn.
 */
@NullMarked
package hornbook.viewer.knowledge;

import org.jspecify.annotations.NullMarked;
