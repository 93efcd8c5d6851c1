package hornbook.shared.job;

import hornbook.shared.job.JobCard.PlannedLine;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.PlannedTask;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import hornbook.shared.store.Writing;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The work planned on a job, task by task with its count. Each call that writes is one deed that can be undone. */
public final class PlannedWork {
    private final Books books;

    public PlannedWork(Books books) {
        this.books = books;
    }

    /** What is planned, in the order it was planned in. */
    public List<PlannedLine> of(String job) {
        return books.where(PlannedTask.class, "job", job).stream()
                .map(task -> new PlannedLine(task.task(), task.count()))
                .toList();
    }

    /**
     * So many of each of these tasks are planned; none takes a task off. What else is planned stays.
     *
     * @throws BadInput where there is no such job, a count is negative, or that is how it is planned already
     */
    public Deed plan(String job, Map<String, Integer> counts) {
        Map<String, Integer> otherwise = new LinkedHashMap<>(counts);
        of(job).forEach(line -> otherwise.remove(line.task(), line.count()));
        otherwise.values().removeIf(count -> count == 0 && counts.size() > 1);
        return books.attempt(title(job, otherwise.isEmpty() ? counts : otherwise), w -> put(w, job, counts))
                .orElseThrow(() ->
                        new BadInput("that is how " + job + " is planned already: name other work, or another count"));
    }

    private static boolean put(Writing w, String job, Map<String, Integer> counts) {
        JobBook.open(w, job);
        boolean changed = false;
        for (Map.Entry<String, Integer> task : counts.entrySet()) {
            changed |= put(w, job, task.getKey(), task.getValue());
        }
        return changed;
    }

    private static String title(String job, Map<String, Integer> counts) {
        if (counts.size() > 1) {
            return counts.size() + " tasks planned on " + job;
        }
        Map.Entry<String, Integer> only = counts.entrySet().iterator().next();
        return only.getValue() == 0
                ? only.getKey() + " no longer planned on " + job
                : only.getKey() + " planned on " + job + (only.getValue() > 1 ? ", " + only.getValue() : "");
    }

    private static boolean put(Writing w, String job, String task, int count) {
        List<PlannedTask> before = w.where(PlannedTask.class, "job", job).stream()
                .filter(line -> line.task().equals(task))
                .toList();
        if (count == 0) {
            before.forEach(line -> w.retire(PlannedTask.class, line.id()));
            return !before.isEmpty();
        }
        if (before.isEmpty()) {
            w.put(new PlannedTask(w.nextId(PlannedTask.class), job, task, count));
            return true;
        }
        PlannedTask line = before.getFirst();
        if (line.count() != count) {
            w.put(new PlannedTask(line.id(), job, task, count));
        }
        return line.count() != count;
    }
}
