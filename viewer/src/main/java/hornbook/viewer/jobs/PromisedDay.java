package hornbook.viewer.jobs;

import hornbook.shared.shop.BadInput;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** The day a horn is promised for: written out, or in so many days. */
public final class PromisedDay {
    static final String LABEL = "Promised: day as 2026-10-12, or in so many days";

    private final Supplier<LocalDate> today;

    public PromisedDay(Supplier<LocalDate> today) {
        this.today = today;
    }

    /** Null where nothing was written. @throws BadInput where it is no day */
    @Nullable
    LocalDate read(String text) {
        if (text.isEmpty()) {
            return null;
        }
        if (text.matches("\\d{1,3}")) {
            return today.get().plusDays(Integer.parseInt(text));
        }
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new BadInput("promised: “" + text + "” is no day: write it as 2026-10-12, or 14 for in two weeks");
        }
    }
}
