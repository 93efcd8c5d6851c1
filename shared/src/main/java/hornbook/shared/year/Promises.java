package hornbook.shared.year;

import hornbook.shared.shop.Job;
import hornbook.shared.shop.TaskTime;
import hornbook.shared.year.YearAnswer.LateLine;
import hornbook.shared.year.YearAnswer.OverrunLine;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/** Days that were promised and minutes that were quoted, and whether they held. */
final class Promises {
    /** A quote missed by no more than this is called held (common practice). */
    private static final double FORGIVEN = 1.2;

    private final List<Job> jobs;
    private final Period in;
    private final Map<String, Integer> clocked = new HashMap<>();

    Promises(List<Job> jobs, Period in, List<TaskTime> times) {
        this.jobs = jobs;
        this.in = in;
        times.forEach(time -> clocked.merge(time.job(), time.minutes(), Integer::sum));
    }

    int promised() {
        return (int) done().filter(job -> job.promised() != null).count();
    }

    int quoted() {
        return (int)
                done().filter(job -> job.quotedMin() != null && took(job) > 0).count();
    }

    List<LateLine> late() {
        return Stream.concat(done(), jobs.stream().filter(this::stillHere))
                .filter(job -> job.promised() != null)
                .map(job -> late(job, Objects.requireNonNull(job.promised())))
                .filter(line -> line.days() > 0)
                .sorted(Comparator.comparingInt(LateLine::days).reversed().thenComparing(LateLine::job))
                .toList();
    }

    private Stream<Job> done() {
        return jobs.stream().filter(in::doneIn);
    }

    /** A horn that ought to have gone home within the year and had not at its end. */
    private boolean stillHere(Job job) {
        boolean waits = job.status().onBench();
        boolean later = job.done() != null && job.done().isAfter(in.to());
        return (waits || later) && job.promised() != null && in.holds(job.promised());
    }

    private LateLine late(Job job, LocalDate promised) {
        LocalDate done = job.done() != null && !job.done().isAfter(in.to()) ? job.done() : null;
        LocalDate until = done == null ? in.to() : done;
        return new LateLine(job.id(), job.kind(), promised, done, (int) ChronoUnit.DAYS.between(promised, until));
    }

    List<OverrunLine> overrun() {
        return done().filter(job -> job.quotedMin() != null && took(job) > FORGIVEN * job.quotedMin())
                .map(job -> overrun(job, Objects.requireNonNull(job.quotedMin())))
                .sorted(Comparator.comparingInt(OverrunLine::overPercent)
                        .reversed()
                        .thenComparing(OverrunLine::job))
                .toList();
    }

    private OverrunLine overrun(Job job, int quoted) {
        int took = took(job);
        int over = quoted == 0 ? 100 : (int) Math.round(100.0 * (took - quoted) / quoted);
        return new OverrunLine(job.id(), job.kind(), quoted, took, over);
    }

    private int took(Job job) {
        return job.minutesTotal() != null ? job.minutesTotal() : clocked.getOrDefault(job.id(), 0);
    }
}
