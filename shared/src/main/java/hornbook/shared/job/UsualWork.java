package hornbook.shared.job;

import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.PartUsed;
import hornbook.shared.shop.TaskTime;
import hornbook.shared.store.Books;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What this shop usually does and uses on a job of a kind, by its own past jobs. */
public final class UsualWork {
    /** With fewer past jobs on the instrument, those on all instruments speak. */
    private static final int FEW = 3;

    private final Books books;

    public UsualWork(Books books) {
        this.books = books;
    }

    /** A task, and how many cups, keys, screws as a rule. */
    public record UsualTask(String task, int count) {}

    /** A lot that such jobs draw on, and what is there now, as written. */
    public record UsualPart(String lot, String title, String count, int jobs) {}

    /** The tasks that at least half of the done jobs of that kind had; empty where there were none. */
    public List<UsualTask> tasks(String kind, String instrument) {
        Set<String> jobs = past(kind, instrument);
        Map<String, Map<String, Integer>> counts = new TreeMap<>();
        books.all(TaskTime.class).stream()
                .filter(time -> jobs.contains(time.job()))
                .forEach(time -> counts.computeIfAbsent(time.task(), task -> new HashMap<>())
                        .merge(time.job(), time.count(), Math::max));
        return counts.entrySet().stream()
                .filter(task -> 2 * task.getValue().size() >= jobs.size())
                .map(task -> new UsualTask(task.getKey(), middle(task.getValue())))
                .toList();
    }

    private static int middle(Map<String, Integer> counts) {
        List<Integer> sorted = counts.values().stream().sorted().toList();
        return sorted.get(sorted.size() / 2);
    }

    /** The lots in use that such jobs drew on most often, those used on the job itself first. */
    public List<UsualPart> parts(String job, int most) {
        Job on = books.find(Job.class, job).orElseThrow();
        Set<String> jobs = past(on.kind(), instrument(on));
        Map<String, Integer> often = new HashMap<>();
        for (PartUsed part : books.all(PartUsed.class)) {
            if (jobs.contains(part.job())) {
                often.merge(part.lot(), 1, Integer::sum);
            }
            if (part.job().equals(job)) {
                often.merge(part.lot(), jobs.size() + 1, Integer::sum);
            }
        }
        return often.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .flatMap(used -> books.find(Lot.class, used.getKey()).stream()
                        .filter(lot -> !lot.count().none() && !lot.keepsake() && !lot.reserve())
                        .map(lot ->
                                new UsualPart(lot.id(), lot.title(), lot.count().written(), used.getValue())))
                .limit(most)
                .toList();
    }

    private Set<String> past(String kind, String instrument) {
        Map<String, String> instruments =
                books.all(Horn.class).stream().collect(Collectors.toMap(Horn::id, Horn::instrument));
        List<Job> done = books.where(Job.class, "kind", kind).stream()
                .filter(job -> job.done() != null)
                .toList();
        Set<String> alike = done.stream()
                .filter(job -> instrument.equals(instruments.get(job.horn())))
                .map(Job::id)
                .collect(Collectors.toSet());
        return alike.size() >= FEW ? alike : done.stream().map(Job::id).collect(Collectors.toSet());
    }

    private String instrument(Job job) {
        return books.find(Horn.class, job.horn()).map(Horn::instrument).orElse("");
    }
}
