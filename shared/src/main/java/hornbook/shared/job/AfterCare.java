package hornbook.shared.job;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Finding;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.Whereabouts;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import hornbook.shared.store.Writing;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What comes after a job is closed: the horn goes back to its owner, and comes by once to be looked at. */
public final class AfterCare {
    /** What a settling-in check is written down under. */
    public static final String FOLLOW_UP = "stage-follow-up";

    /** Pads and corks have settled after four weeks; after eight nobody comes any more (common practice). */
    private static final int WEEKS_TO_SETTLE = 4;

    private static final int WEEKS_AT_MOST = 8;

    private static final String BACK = "handed back to its owner";

    private final Books books;

    public AfterCare(Books books) {
        this.books = books;
    }

    /** A job whose horn should come by: when it was done, and until when. */
    public record Due(String job, String horn, LocalDate done, LocalDate until) {}

    /** When a horn that is done today should come by. */
    public Visit visit() {
        LocalDate today = books.today();
        return new Visit(today.plusWeeks(WEEKS_TO_SETTLE), today.plusWeeks(WEEKS_AT_MOST));
    }

    /** From one day to another. */
    public record Visit(LocalDate from, LocalDate until) {}

    /** Jobs done four to eight weeks ago that nobody looked at since, the longest ago first. */
    public List<Due> due() {
        LocalDate today = books.today();
        Set<String> seen = books.where(Finding.class, "what", FOLLOW_UP).stream()
                .map(Finding::job)
                .collect(Collectors.toSet());
        return books.where(Job.class, "status", "done").stream()
                .filter(job -> !seen.contains(job.id()))
                .flatMap(AfterCare::due)
                .filter(due -> !due.done().plusWeeks(WEEKS_TO_SETTLE).isAfter(today))
                .filter(due -> !due.until().isBefore(today))
                .sorted(Comparator.comparing(Due::done))
                .toList();
    }

    private static Stream<Due> due(Job job) {
        LocalDate done = job.done();
        return done == null
                ? Stream.empty()
                : Stream.of(new Due(job.id(), job.horn(), done, done.plusWeeks(WEEKS_AT_MOST)));
    }

    /** The horn goes back: nothing of it is in the shop any more. */
    public Deed handBack(String job) {
        return books.write("hand back " + job, w -> {
            closed(JobBook.open(w, job));
            if (w.where(Whereabouts.class, "job", job).stream()
                    .anyMatch(at -> at.where().equals(BACK))) {
                throw new BadInput(job + " was handed back before: nothing to hand back");
            }
            goesBack(w, job, books.today());
        });
    }

    static void goesBack(Writing w, String job, LocalDate today) {
        w.where(Whereabouts.class, "job", job).forEach(at -> w.retire(Whereabouts.class, at.id()));
        w.put(new Whereabouts(w.nextId(Whereabouts.class), job, "horn", BACK, "", today));
    }

    /**
     * The settling-in check.
     *
     * @param found {@code held}, {@code moved} or {@code came back}
     * @param words what moved and why
     */
    public Deed followUp(String job, String found, String words) {
        return books.write("follow-up of " + job, w -> {
            Job on = JobBook.open(w, job);
            closed(on);
            w.put(new Finding(
                    w.nextId(Finding.class),
                    job,
                    on.horn(),
                    books.today(),
                    FOLLOW_UP,
                    "",
                    found,
                    "",
                    "found",
                    null,
                    words));
        });
    }

    private static void closed(Job job) {
        if (job.status().onBench()) {
            throw new BadInput(job.id() + " is not closed: close it first, with how it went");
        }
    }
}
