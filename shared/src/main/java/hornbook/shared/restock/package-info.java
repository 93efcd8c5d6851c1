/**
 * The question: what is about to run out, and what to order from whom?
 *
 * <p>Here belong the forecast of use, the demand until a delivery comes, the point at which to order, the list that
 * follows, and what is recorded when goods come in or a verdict falls. Not here: which pads the open jobs want (pads;
 * the viewer hands their numbers in), which supply serves which task and how long it keeps (the catalogue).
 *
 * <p>Begin with {@link hornbook.shared.restock.Restock}.
 */
@NullMarked
package hornbook.shared.restock;

import org.jspecify.annotations.NullMarked;
