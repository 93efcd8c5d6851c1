package hornbook.catalogue.estimate;

import hornbook.catalogue.entry.Nearest;
import hornbook.catalogue.entry.Task;
import hornbook.shared.shop.BadInput;
import java.util.Map;
import java.util.OptionalDouble;

/** The usual minutes of tasks, from entries. */
record Book(Map<String, Task> tasks) {
    /** What an instrument that the book does not list is timed as (common practice). */
    private static final Map<String, String> TIMED_AS =
            Map.of("sopranino", "soprano", "c-melody", "tenor", "bass", "baritone", "other", "alto");

    /** Minutes for one of a task; nothing where it does not occur on the instrument or is not in the book. */
    OptionalDouble minutes(String task, String instrument) {
        Task known = tasks.get(task);
        Double median = known == null ? null : known.medianMinutes().get(TIMED_AS.getOrDefault(instrument, instrument));
        return median == null || median <= 0 ? OptionalDouble.empty() : OptionalDouble.of(median);
    }

    /** Whether it can say how long that usually takes. */
    boolean knows(Clocked c) {
        return c.count() > 0 && minutes(c.task(), c.instrument()).isPresent();
    }

    /** ln(minutes / book), of a clock whose task it knows. A clock that shows 0 ran for less than half a minute. */
    double log(Clocked c) {
        double usual = minutes(c.task(), c.instrument()).orElseThrow() * c.count();
        return Math.log(Math.max(c.minutes(), 0.5) / usual);
    }

    Task task(String id) {
        Task known = tasks.get(id);
        if (known == null) {
            throw new BadInput("“" + id + "” is no task that is known: "
                    + Nearest.of(id, tasks.keySet())
                            .map(near -> "did you mean " + near + "?")
                            .orElse("look it up with “hornbook find --kind task "
                                    + id.replace("task-", "").replace('-', ' ') + "”"));
        }
        return known;
    }
}
