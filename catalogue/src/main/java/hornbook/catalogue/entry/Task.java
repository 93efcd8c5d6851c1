package hornbook.catalogue.entry;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the clock runs on.
 *
 * @param stage id
 * @param medianMinutes half of such tasks stay under, hands on, by instrument; missing where it does not occur
 * @param sigma standard deviation of ln(minutes) of one task on unfamiliar horns
 * @param unit what the minutes are for, `per …`
 * @param usualWith ids of tasks that go with it
 * @param faults ids of faults it cures
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record Task(
        String id,
        String title,
        String stage,
        Map<String, Double> medianMinutes,
        double sigma,
        String unit,
        List<String> usualWith,
        List<String> faults,
        @Nullable String notes,
        String source,
        String sureness)
        implements Entry {

    /** Keeps its own copies. */
    public Task {
        medianMinutes = Ordered.copy(medianMinutes);
        usualWith = List.copyOf(usualWith);
        faults = List.copyOf(faults);
    }

    static Task from(Fields in) {
        return new Task(
                in.text("id"),
                in.text("title"),
                in.text("stage"),
                in.numbers("median_minutes"),
                in.number("sigma"),
                in.text("unit"),
                in.texts("usual_with"),
                in.texts("faults"),
                in.optionalText("notes"),
                in.text("source"),
                in.text("sureness"));
    }
}
