/**
 * The screen Fit &amp; gauges: numbers in, answers while they are typed. A size in every form, which thread, which pad goes
 * where.
 *
 * <p>Each pane has a model that knows no widget and asks one service. Not here: how anything is reckoned; that is for the
 * rooms below.
 */
@NullMarked
package hornbook.viewer.gauges;

import org.jspecify.annotations.NullMarked;
