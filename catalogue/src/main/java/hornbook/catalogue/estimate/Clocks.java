package hornbook.catalogue.estimate;

import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.TaskTime;
import hornbook.shared.store.Books;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads what the shop's clocks said up to today: a task clocked on several days is one. */
final class Clocks {
    private static final String UNLISTED = "unlisted";

    private Clocks() {}

    static List<Clocked> of(Books books) {
        Map<String, Horn> horns = new HashMap<>();
        books.all(Horn.class).forEach(horn -> horns.put(horn.id(), horn));
        Map<String, Horn> hornOf = new HashMap<>();
        books.all(Job.class).forEach(job -> {
            Horn horn = horns.get(job.horn());
            if (horn != null) {
                hornOf.put(job.id(), horn);
            }
        });
        LocalDate today = books.today();
        Map<List<String>, Clocked> clocked = new LinkedHashMap<>();
        for (TaskTime time : books.all(TaskTime.class)) {
            Horn horn = hornOf.get(time.job());
            if (horn != null && !time.date().isAfter(today)) {
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
