/**
 * The question: which pad, and which resonator, goes into which cup?
 *
 * <p>Here belong the rule of sizes, the trays of pads on hand and the least costly way to serve every measured cup of
 * every open job from them. Not here: what to order for stock (restock; the viewer hands it what is short), what a cup
 * is and where it sits (the catalogue). The viewer asks.
 *
 * <p>Begin with {@link hornbook.shared.pads.Pads}.
 */
@NullMarked
package hornbook.shared.pads;

import org.jspecify.annotations.NullMarked;
