package hornbook.shared.job;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.RunningClock;
import hornbook.shared.shop.TaskTime;
import hornbook.shared.shop.Timer;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import hornbook.shared.store.Writing;
import java.util.Locale;
import java.util.function.Consumer;

/** Jobs come to their end: one deed, whatever all ends with them. */
public final class Closing {
    private final Books books;

    public Closing(Books books) {
        this.books = books;
    }

    /** As {@link #close(String, Ended, Consumer)}, and nothing else. */
    public Deed close(String job, Ended how) {
        return close(job, how, w -> {});
    }

    /**
     * Closes a job: how it went, in a grade and a sentence. Its clocks stop, its timers are put away.
     *
     * @param also what is written down with it
     * @throws BadInput where a clock ran too long to be believed, or the job is closed already
     */
    public Deed close(String job, Ended how, Consumer<Writing> also) {
        String back = how.back() ? ", handed back" : "";
        return books.write("close " + job + ": " + how.went().name().toLowerCase(Locale.ROOT) + back, w -> {
            Job on = JobBook.open(w, job);
            stillOpen(on);
            Clocks clocks = new Clocks(books);
            w.where(RunningClock.class, "job", job).forEach(clock -> clocks.stop(w, clock));
            w.where(Timer.class, "job", job).forEach(timer -> w.retire(Timer.class, timer.id()));
            int minutes = w.where(TaskTime.class, "job", job).stream()
                    .mapToInt(TaskTime::minutes)
                    .sum();
            w.put(on.closed(books.today(), how.went(), how.sentence(), minutes));
            if (how.back()) {
                AfterCare.goesBack(w, job, books.today());
            }
            also.accept(w);
        });
    }

    private static void stillOpen(Job job) {
        if (!job.status().onBench()) {
            throw new BadInput(job.id() + " is closed already: undo that, or write a follow-up");
        }
    }
}
