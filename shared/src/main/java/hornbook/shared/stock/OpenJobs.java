package hornbook.shared.stock;

import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.JobStatus;
import hornbook.shared.shop.RunningClock;
import hornbook.shared.store.Books;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Answers which jobs a part may be taken for: first the one whose clock runs, then the newest. */
public final class OpenJobs {
    private final Books books;

    public OpenJobs(Books books) {
        this.books = books;
    }

    public List<OpenJob> all() {
        Set<String> running =
                books.all(RunningClock.class).stream().map(RunningClock::job).collect(Collectors.toUnmodifiableSet());
        return Stream.of(JobStatus.OPEN, JobStatus.WAITING)
                .flatMap(status ->
                        books.where(Job.class, "status", status.name().toLowerCase(java.util.Locale.ROOT)).stream())
                .sorted(Comparator.comparing((Job job) -> !running.contains(job.id()))
                        .thenComparing(Comparator.comparing(Job::tookIn)
                                .thenComparing(Job::id)
                                .reversed()))
                .map(job -> new OpenJob(job.id(), what(job), running.contains(job.id())))
                .toList();
    }

    private String what(Job job) {
        String horn = books.find(Horn.class, job.horn())
                .map(h -> (h.soldAs() == null ? "" : h.soldAs()) + " " + h.instrument())
                .orElse(job.horn());
        return horn.strip() + ": " + job.complaint();
    }
}
