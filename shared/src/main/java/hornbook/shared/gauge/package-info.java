/**
 * The question: what is this size in every form? Millimetres, inches, thou, the fraction, the drill, each wire and sheet
 * gauge, common stock and the pad, on either side with the error.
 *
 * <p>Ask {@link hornbook.shared.gauge.SizeForms}. Only published tables and plain arithmetic belong here; what the shop
 * has in its drawers does not. Called by commands and screens; calls only {@code measure}.
 */
@NullMarked
package hornbook.shared.gauge;

import org.jspecify.annotations.NullMarked;
