package hornbook.shared.pads;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A cup that wants a pad. All measures in mm.
 *
 * @param cup which one, as {@code cup-low-b}; the stacks are known by {@code cup-small-c b bis a g} and {@code fs f e d}
 * @param diameter inside, pad and glue out
 * @param job whose horn it is on; cups without one are one horn's
 * @param thickness of the old good pad; not given, the usual 3.8 to 4.4
 * @param rim inside of the tone hole's rim, for the resonator; not given, none is looked for
 */
public record Cup(
        String cup,
        BigDecimal diameter,
        @Nullable String job,
        @Nullable BigDecimal thickness,
        @Nullable BigDecimal rim) {

    /** As a person would name it. */
    String named() {
        return job == null ? cup : cup + " of " + job;
    }
}
