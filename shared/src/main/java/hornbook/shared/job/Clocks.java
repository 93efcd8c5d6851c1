package hornbook.shared.job;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.Plainly;
import hornbook.shared.shop.RunningClock;
import hornbook.shared.shop.TaskTime;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import hornbook.shared.store.Writing;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The clocks of the bench. A running clock stands in the books, so a crash does not stop it; one that was forgotten is
 * asked about and never guessed.
 */
public final class Clocks {
    /** No one works on one task longer without a break; more than this was forgotten (common practice). */
    private static final Duration LONGEST = Duration.ofHours(4);

    /** Minutes from midnight to midnight. */
    private static final int A_DAY = 24 * 60;

    private static final int MOST = 10_000;

    private final Books books;

    public Clocks(Books books) {
        this.books = books;
    }

    /** The clocks that run. */
    public List<RunningClock> running() {
        return books.all(RunningClock.class);
    }

    /** Who clocked most: the shop's owner, until told otherwise. */
    public String usual() {
        return books.all(TaskTime.class).stream()
                .collect(Collectors.groupingBy(TaskTime::who, Collectors.counting()))
                .entrySet()
                .stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse("me");
    }

    /** Starts a clock on a task; the same person's other clock is stopped, as two hands do one thing. */
    public Deed start(String job, String task, int count, String who) {
        counted(count);
        return books.write("start " + Plainly.said(task) + " on " + job, w -> {
            JobBook.open(w, job);
            running().stream().filter(clock -> clock.who().equals(who)).forEach(clock -> {
                stop(w, clock);
            });
            w.put(new RunningClock(w.nextId(RunningClock.class), job, task, count, books.now(), who));
        });
    }

    /**
     * Stops the clock on a job.
     *
     * @param who whose clock, null where only one runs
     * @param minutes what it really took, where the clock was forgotten; null takes the clock's word
     * @throws BadInput where no clock runs, several do, or it ran too long to be believed
     */
    public Deed stop(String job, @Nullable String who, @Nullable Integer minutes) {
        RunningClock clock = theOne(job, who);
        return books.write("stop " + Plainly.said(clock.task()) + " on " + job, w -> {
            stop(w, clock, minutes == null ? minutes(clock) : minutes);
        });
    }

    /** As part of another deed. @throws BadInput where it ran too long to be believed */
    void stop(Writing w, RunningClock clock) {
        stop(w, clock, minutes(clock));
    }

    private static void stop(Writing w, RunningClock clock, int minutes) {
        w.put(time(w.nextId(TaskTime.class), clock, minutes));
        w.retire(RunningClock.class, clock.id());
    }

    /** Goes on with what was clocked last on a job. */
    public Deed goOn(String job, String who) {
        TaskTime last = books.where(TaskTime.class, "job", job).stream()
                .reduce((before, after) -> after)
                .orElseThrow(() -> new BadInput("nothing was clocked on " + job + " yet: name the task"));
        return start(job, last.task(), last.count(), who);
    }

    /** Minutes told afterwards. */
    public Deed told(String job, String task, int count, int minutes, @Nullable LocalDate day, String who) {
        if (minutes < 0) {
            throw new BadInput(minutes + " minutes cannot have passed: name 0 or more");
        }
        if (minutes > A_DAY) {
            throw new BadInput(minutes + " minutes are more than a day has: write them day by day");
        }
        if (day != null && day.isAfter(books.today())) {
            throw new BadInput(day + " is yet to come: name the day it was worked");
        }
        counted(count);
        if (day != null) {
            books.find(Job.class, job)
                    .filter(on -> day.isBefore(on.tookIn().minusDays(1)))
                    .ifPresent(on -> {
                        throw new BadInput(day + " is before " + job + " was taken in on " + on.tookIn()
                                + ": name the day it was worked");
                    });
        }
        return books.write(minutes + " min " + Plainly.said(task) + " on " + job, w -> {
            JobBook.open(w, job);
            w.put(new TaskTime(
                    w.nextId(TaskTime.class),
                    job,
                    task,
                    count,
                    "1/1",
                    day == null ? books.today() : day,
                    minutes,
                    who));
        });
    }

    /**
     * Puts right how many of a task a job had, and how many minutes all together; the clock that runs on it keeps
     * running.
     */
    public Deed putRight(String job, String task, int count, int minutes) {
        if (count < 1 || minutes < 0) {
            throw new BadInput(
                    "one or more of a task, and 0 minutes or more: " + count + " in " + minutes + " minutes cannot be");
        }
        return books.write(Plainly.said(task) + " on " + job + " put right: " + count + ", " + minutes + " min", w -> {
            JobBook.open(w, job);
            new Recount(w).of(job, task, count, minutes);
        });
    }

    private static void counted(int count) {
        if (count < 1 || count > MOST) {
            throw new BadInput(count + " of a task cannot be: name 1 to " + MOST);
        }
    }

    private RunningClock theOne(String job, @Nullable String who) {
        List<RunningClock> clocks = running().stream()
                .filter(clock ->
                        clock.job().equals(job) && (who == null || clock.who().equals(who)))
                .toList();
        if (clocks.size() != 1) {
            throw new BadInput(
                    clocks.isEmpty()
                            ? "no clock runs on " + job + ": start one with “hornbook job start " + job + " TASK”"
                            : "several clocks run on " + job + ": say whose with --who");
        }
        return clocks.getFirst();
    }

    private int minutes(RunningClock clock) {
        if (forgotten(clock.since(), books.now())) {
            throw new BadInput("the clock on " + clock.task() + " of " + clock.job() + " has run since " + clock.since()
                    + ": say how long it really took with --minutes");
        }
        return (int) Math.round(Duration.between(clock.since(), books.now()).toSeconds() / 60.0);
    }

    /** Whether a clock that runs since then is not to be believed. */
    static boolean forgotten(LocalDateTime since, LocalDateTime now) {
        Duration ran = Duration.between(since, now);
        return ran.isNegative() || ran.compareTo(LONGEST) > 0;
    }

    private static TaskTime time(String id, RunningClock clock, int minutes) {
        return new TaskTime(
                id,
                clock.job(),
                clock.task(),
                clock.count(),
                "1/1",
                clock.since().toLocalDate(),
                minutes,
                clock.who());
    }
}
