package hornbook.viewer.gauges;

import hornbook.catalogue.spring.SpringAnswer;
import org.jspecify.annotations.Nullable;

/**
 * What the springs pane shows.
 *
 * @param trouble which field cannot be read, and why
 */
record SpringView(
        SpringAsked asked,
        @Nullable SpringAnswer answer,
        @Nullable String trouble) {
    static final SpringView NOTHING = new SpringView(SpringAsked.NOTHING, null, null);
}
