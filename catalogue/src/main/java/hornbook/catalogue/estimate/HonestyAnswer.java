package hornbook.catalogue.estimate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Estimates held against the truth.
 *
 * @param jobs how many were held against it: those with ten jobs or more before them; the four figures after it are
 *     missing where there are none
 * @param underP50 share that took no longer than P50; a half would be honest
 * @param underP80 share that took no longer than P80; four fifths would be honest
 * @param logError mean of |ln(took / P50)|
 * @param bookLogError the same of the book alone
 * @param over the same shares as time went by, twenty jobs each
 * @param lines job by job, in the order in which they came in
 * @param remarks what to make of it, in words
 */
public record HonestyAnswer(
        int jobs,
        @Nullable Double underP50,
        @Nullable Double underP80,
        @Nullable Double logError,
        @Nullable Double bookLogError,
        List<Stretch> over,
        List<JobLine> lines,
        List<String> remarks) {
    /** Fewer jobs behind an estimate than these: the book speaks, and the shop is not blamed. */
    private static final int ENOUGH_BEFORE = 10;

    private static final int STRETCH = 20;

    /** Standard errors within which a share is taken for chance. */
    private static final double BY_CHANCE = 1.96;

    /** Some jobs in a row: the days on which the first and the last came in, and the shares. */
    public record Stretch(LocalDate from, LocalDate to, int jobs, double underP50, double underP80) {}

    /**
     * A job. Minutes of the work that the book knows.
     *
     * @param quotedMin what was said to the owner
     * @param fromJobs jobs with clocks behind the estimate
     */
    public record JobLine(
            String job,
            String kind,
            LocalDate tookIn,
            @Nullable LocalDate done,
            long p50Min,
            long p80Min,
            long bookMin,
            int tookMin,
            @Nullable Integer quotedMin,
            int fromJobs) {}

    /** The same for the jobs that came in up to a day. */
    public HonestyAnswer until(LocalDate last) {
        return of(lines.stream().filter(line -> !line.tookIn().isAfter(last)).toList());
    }

    static HonestyAnswer of(List<JobLine> lines) {
        List<JobLine> held =
                lines.stream().filter(line -> line.fromJobs() >= ENOUGH_BEFORE).toList();
        if (held.isEmpty()) {
            String none = "no closed job has clocks and ten jobs before it: nothing to hold the estimates against yet";
            return new HonestyAnswer(0, null, null, null, null, List.of(), lines, List.of(none));
        }
        double p50 = share(held, line -> line.tookMin() <= line.p50Min());
        double p80 = share(held, line -> line.tookMin() <= line.p80Min());
        return new HonestyAnswer(
                held.size(),
                p50,
                p80,
                mean(held, line -> Math.abs(Math.log((double) line.tookMin() / line.p50Min()))),
                mean(held, line -> Math.abs(Math.log((double) line.tookMin() / line.bookMin()))),
                stretches(held),
                lines,
                List.of(judged("P50", p50, 0.5, held.size()), judged("P80", p80, 0.8, held.size())));
    }

    private static List<Stretch> stretches(List<JobLine> held) {
        List<Stretch> over = new ArrayList<>();
        for (int from = 0; from + STRETCH <= held.size(); from += STRETCH) {
            boolean last = from + 2 * STRETCH > held.size();
            List<JobLine> some = held.subList(from, last ? held.size() : from + STRETCH);
            over.add(new Stretch(
                    some.getFirst().tookIn(),
                    some.getLast().tookIn(),
                    some.size(),
                    share(some, line -> line.tookMin() <= line.p50Min()),
                    share(some, line -> line.tookMin() <= line.p80Min())));
        }
        return over;
    }

    private static String judged(String name, double share, double honest, int jobs) {
        double chance = BY_CHANCE * Math.sqrt(honest * (1 - honest) / jobs);
        String verdict = Math.abs(share - honest) <= chance
                ? "no more off than chance"
                : share < honest ? "too brave: work takes longer than it says" : "too careful";
        return String.format(
                "%.0f in 100 of %d jobs took no longer than %s, where %.0f would be honest: %s",
                100 * share, jobs, name, 100 * honest, verdict);
    }

    private static double share(List<JobLine> lines, Predicate<JobLine> which) {
        return mean(lines, line -> which.test(line) ? 1 : 0);
    }

    private static double mean(List<JobLine> lines, ToDoubleFunction<JobLine> of) {
        return lines.stream().mapToDouble(of).average().orElseThrow();
    }
}
