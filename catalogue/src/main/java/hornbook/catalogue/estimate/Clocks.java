package hornbook.catalogue.estimate;

import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.JobStatus;
import hornbook.shared.shop.TaskTime;
import hornbook.shared.store.Books;
import hornbook.shared.store.View;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the shop's clocks said of jobs that are closed: a task clocked on several days is one. A job still on the bench
 * tells nothing yet: nobody knows which of its tasks are done, and no job is evidence for itself.
 */
final class Clocks {
    private static final String UNLISTED = "unlisted";

    private final Map<String, Horn> hornOf = new HashMap<>();
    private final Map<String, LocalDate> closed = new HashMap<>();
    private final List<TaskTime> times;

    private Clocks(View view) {
        Map<String, Horn> horns = new HashMap<>();
        view.all(Horn.class).forEach(horn -> horns.put(horn.id(), horn));
        view.all(Job.class).forEach(job -> {
            Horn horn = horns.get(job.horn());
            if (horn != null && job.status() == JobStatus.DONE) {
                hornOf.put(job.id(), horn);
                closed.put(job.id(), job.done() == null ? LocalDate.MIN : job.done());
            }
        });
        times = view.all(TaskTime.class);
    }

    static Clocks read(View view) {
        return new Clocks(view);
    }

    /** Up to today. */
    static List<Clocked> of(Books books) {
        return books.reading(view -> read(view).until(view.today()));
    }

    /** Of the jobs closed up to a day, that day included. */
    List<Clocked> until(LocalDate last) {
        Map<List<String>, Clocked> clocked = new LinkedHashMap<>();
        for (TaskTime time : times) {
            Horn horn = hornOf.get(time.job());
            boolean then = !time.date().isAfter(last)
                    && !closed.getOrDefault(time.job(), LocalDate.MAX).isAfter(last);
            if (horn != null && then) {
                clocked.merge(List.of(time.job(), time.task(), time.who()), of(time, horn), Clocks::added);
            }
        }
        return new ArrayList<>(clocked.values());
    }

    private static Clocked of(TaskTime time, Horn horn) {
        return new Clocked(
                time.job(),
                time.task(),
                horn.instrument(),
                horn.make(),
                placed(horn.model()),
                time.who(),
                time.count(),
                time.minutes());
    }

    private static @Nullable String placed(String model) {
        return model.equals(UNLISTED) ? null : model;
    }

    private static Clocked added(Clocked a, Clocked b) {
        return new Clocked(
                a.job(),
                a.task(),
                a.instrument(),
                a.make(),
                a.model(),
                a.who(),
                Math.max(a.count(), b.count()),
                a.minutes() + b.minutes());
    }
}
