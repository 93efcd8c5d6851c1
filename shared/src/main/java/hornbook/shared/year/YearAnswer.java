package hornbook.shared.year;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A year of the books. Money is in the shop's own, as its deliveries were priced.
 *
 * @param upTo the last day that was reckoned in: the year's, or today
 * @param cameIn jobs taken in
 * @param done jobs handed back
 * @param declined jobs taken in that came to nothing
 * @param minutes clocked
 * @param months one for each month up to {@code upTo}
 * @param kinds hours by kind of job, most first
 * @param tasks hours by task, most first
 * @param used what left the shelves for jobs, dearest first
 * @param usedCost of what has a price
 * @param spent on deliveries of the year that have a price
 * @param late promises that did not hold, latest first
 * @param promised jobs handed back in the year that had been promised for a day
 * @param overrun quotes that did not hold by more than a fifth, worst first
 * @param quoted jobs handed back in the year that had been quoted
 * @param suppliers slowest first
 * @param remarks what the figures lack, in words
 */
public record YearAnswer(
        int year,
        LocalDate upTo,
        int cameIn,
        int done,
        int declined,
        int minutes,
        List<MonthLine> months,
        List<KindLine> kinds,
        List<TaskLine> tasks,
        List<UsedLine> used,
        BigDecimal usedCost,
        BigDecimal spent,
        List<LateLine> late,
        int promised,
        List<OverrunLine> overrun,
        int quoted,
        List<SupplierLine> suppliers,
        List<String> remarks) {

    /** Whether the books say nothing of that year. */
    public boolean empty() {
        return cameIn == 0 && done == 0 && minutes == 0 && used.isEmpty() && suppliers.isEmpty();
    }

    /** A month, 1 to 12. */
    public record MonthLine(int month, int cameIn, int done, int minutes, int pieces, BigDecimal spent) {}

    /**
     * A kind of job.
     *
     * @param done handed back in the year
     * @param minutes clocked in the year, on jobs done or not
     */
    public record KindLine(String kind, int done, int minutes) {}

    /** A task, by its id. */
    public record TaskLine(String task, int jobs, int minutes) {}

    /**
     * Things of one kind that were used.
     *
     * @param item id of the kind of part or supply
     * @param cost at the last price paid before each was used; missing where none was ever paid
     * @param unpriced pieces that nobody ever paid a known price for
     */
    public record UsedLine(
            String item, int pieces, @Nullable BigDecimal cost, int unpriced) {}

    /**
     * A promise that did not hold.
     *
     * @param done missing where the horn is still here
     * @param days late, until today where the horn is still here
     */
    public record LateLine(
            String job,
            String kind,
            LocalDate promised,
            @Nullable LocalDate done,
            int days) {}

    /** A quote that did not hold. Minutes. */
    public record OverrunLine(String job, String kind, int quotedMin, int tookMin, int overPercent) {}

    /**
     * A supplier. Days run from order to arrival; each order counts once, however many lots came with it.
     *
     * @param slowest days of the slowest delivery
     * @param jobsWaited deliveries for which a job waited
     */
    public record SupplierLine(
            String id,
            String name,
            int deliveries,
            @Nullable Integer typicalDays,
            @Nullable Integer slowest,
            int jobsWaited,
            BigDecimal spent) {}
}
