package hornbook.shared.supply;

import java.util.Locale;

/** Whether to buy it again. */
public enum Verdict {
    KEEP,
    AVOID,
    ON_TRIAL;

    /** As it stands in the books. */
    public String written() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
