package hornbook.viewer.gauges;

import hornbook.shared.gauge.GaugeAnswer;
import org.jspecify.annotations.Nullable;

/**
 * What the size pane shows.
 *
 * @param answer of the last text that could be read
 * @param trouble why the text is no size, in a sentence
 */
record SizeView(
        String text, @Nullable GaugeAnswer answer, @Nullable String trouble) {
    static final SizeView NOTHING = new SizeView("", null, null);
}
