package hornbook.catalogue.estimate;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.estimate.EstimateQuestion.TaskCount;
import hornbook.catalogue.estimate.HonestyAnswer.JobLine;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.JobStatus;
import hornbook.shared.store.Books;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * How honest the estimates would have been: each closed job is estimated from what the clocks had said before the quarter
 * of a year in which it came in, and held against what it took.
 */
public final class Honesty {
    /** Enough for the two quantiles: they move by about two hundredths. */
    private static final int DRAWS = 4000;

    private final Books books;
    private final Catalogue catalogue;
    private final Book book;

    public Honesty(Books books, Catalogue catalogue) {
        this.books = books;
        this.catalogue = catalogue;
        this.book = new Book(catalogue.tasks());
    }

    /** Is told how far the work is; it ends the work by throwing. */
    public interface Watcher {
        void reached(long done, long total, String doing);
    }

    /** All closed jobs up to today. */
    public HonestyAnswer answer() {
        return answer((done, total, doing) -> {});
    }

    /** As {@link #answer()}, for who wants to know how far it is: some seconds for ten years. */
    public HonestyAnswer answer(Watcher watcher) {
        return books.reading(view -> {
            LocalDate today = view.today();
            List<Job> jobs = view.all(Job.class).stream()
                    .filter(job -> job.status() == JobStatus.DONE)
                    .filter(job -> job.done() == null || !job.done().isAfter(today))
                    .sorted(Comparator.comparing(Job::tookIn).thenComparing(Job::id))
                    .toList();
            return HonestyAnswer.of(lines(jobs, Clocks.read(view), today, watcher));
        });
    }

    private List<JobLine> lines(List<Job> jobs, Clocks clocks, LocalDate today, Watcher watcher) {
        Map<String, List<Clocked>> took = clocks.until(today).stream().collect(Collectors.groupingBy(Clocked::job));
        List<JobLine> lines = new ArrayList<>();
        LocalDate quarter = LocalDate.MIN;
        Estimate then = null;
        for (Job job : jobs) {
            watcher.reached(lines.size(), jobs.size(), "estimating past jobs anew");
            if (then == null || !quarter.equals(quarter(job.tookIn()))) {
                quarter = quarter(job.tookIn());
                then = new Estimate(clocks.until(quarter.minusDays(1)), catalogue, then);
            }
            JobLine line = line(job, known(took.getOrDefault(job.id(), List.of())), then);
            if (line != null) {
                lines.add(line);
            }
        }
        return lines;
    }

    private static LocalDate quarter(LocalDate day) {
        return LocalDate.of(day.getYear(), day.getMonth().firstMonthOfQuarter(), 1);
    }

    /** Clocked work that the book knows; the rest cannot be estimated. */
    private List<Clocked> known(List<Clocked> clocked) {
        return clocked.stream().filter(book::knows).toList();
    }

    private @Nullable JobLine line(Job job, List<Clocked> clocked, Estimate then) {
        int minutes = clocked.stream().mapToInt(Clocked::minutes).sum();
        if (minutes == 0) {
            return null;
        }
        Clocked one = clocked.getFirst();
        String model = catalogue.models().containsKey(String.valueOf(one.model())) ? one.model() : null;
        Map<String, Integer> counts =
                clocked.stream().collect(Collectors.toMap(Clocked::task, Clocked::count, Math::max));
        List<TaskCount> tasks = counts.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(t -> new TaskCount(t.getKey(), t.getValue()))
                .toList();
        Draws said = then.roughly(new EstimateQuestion(tasks, model, one.instrument(), null), DRAWS);
        double byTheBook = tasks.stream()
                .mapToDouble(t ->
                        t.count() * book.minutes(t.task(), one.instrument()).orElseThrow())
                .sum();
        return new JobLine(
                job.id(),
                job.kind(),
                job.tookIn(),
                job.done(),
                Math.round(said.sumAt(0.5)),
                Math.round(said.sumAt(0.8)),
                Math.round(byTheBook),
                minutes,
                job.quotedMin(),
                then.jobs());
    }
}
