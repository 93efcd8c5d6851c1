package hornbook.catalogue.estimate;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.estimate.ClockedShop.Coming;
import hornbook.catalogue.estimate.EstimateQuestion.TaskCount;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * How honest the estimates are where the truth is known: shops drawn with known effects, jobs to come estimated from those
 * before. Beside it, as its control, the book and the plain mean of the shop's own clocks. {@code --n SHOPS --seed S}, and {@code --past N} for shops of
 * one size alone, {@code --slips 1} with one time in fifty typed sixty times too long
 */
public final class ClockedShopsTrial {
    /** Clocked jobs behind the estimates, shop by shop in turn. */
    private static final int[] PAST = {15, 60, 200};

    private static final int COMING = 12;
    private static final int ONE_SLIP_IN = 50;
    private static final int MINUTES = 60;

    private ClockedShopsTrial() {}

    /** What came out over some jobs; errors are means of the logarithm's. */
    static final class Tally {
        int jobs;
        private int under50;
        private int under80;
        private double error;
        private double meanError;
        private double bookError;

        private void add(double took, EstimateAnswer said, double plainMean) {
            jobs++;
            under50 += took <= said.p50Min() ? 1 : 0;
            under80 += took <= said.p80Min() ? 1 : 0;
            error += Math.abs(Math.log(took / said.p50Min()));
            meanError += Math.abs(Math.log(took / plainMean));
            bookError += Math.abs(Math.log(took / said.bookMin()));
        }

        double under50() {
            return 100.0 * under50 / jobs;
        }

        double under80() {
            return 100.0 * under80 / jobs;
        }

        double error() {
            return error / jobs;
        }

        double meanError() {
            return meanError / jobs;
        }

        double bookError() {
            return bookError / jobs;
        }
    }

    /** Tallies by how many jobs were behind the estimate, and of all under 0. */
    static Map<Integer, Tally> run(int shops, long seed) {
        return run(shops, seed, PAST, false);
    }

    /** @param slips hours written where minutes were meant, one time in fifty */
    static Map<Integer, Tally> run(int shops, long seed, int[] pasts, boolean slips) {
        Catalogue catalogue = ClockedShop.catalogue();
        SplittableRandom random = new SplittableRandom(seed);
        Map<Integer, Tally> tallies = new LinkedHashMap<>();
        for (int s = 0; s < shops; s++) {
            int before = pasts[s % pasts.length];
            ClockedShop shop = ClockedShop.draw(random.split(), catalogue, before, COMING);
            List<Clocked> past = slips ? slipped(shop.past(), random.split()) : shop.past();
            Estimate estimate = new Estimate(past, catalogue);
            for (Coming job : shop.coming()) {
                EstimateAnswer said = estimate.estimate(job.question());
                double mean = plainMean(job.question(), past, catalogue);
                tallies.computeIfAbsent(0, k -> new Tally()).add(job.minutes(), said, mean);
                tallies.computeIfAbsent(before, k -> new Tally()).add(job.minutes(), said, mean);
            }
        }
        return tallies;
    }

    private static List<Clocked> slipped(List<Clocked> clocks, SplittableRandom random) {
        return clocks.stream()
                .map(c -> random.nextInt(ONE_SLIP_IN) > 0
                        ? c
                        : new Clocked(
                                c.job(),
                                c.task(),
                                c.instrument(),
                                c.make(),
                                c.model(),
                                c.who(),
                                c.count(),
                                c.minutes() * MINUTES))
                .toList();
    }

    /** The mean minutes of one of each task in the shop's clocks; the book's where it was never clocked. */
    private static double plainMean(EstimateQuestion question, List<Clocked> past, Catalogue catalogue) {
        Map<String, double[]> sums = new HashMap<>();
        for (Clocked c : past) {
            double[] sum = sums.computeIfAbsent(c.task(), t -> new double[2]);
            sum[0] += c.minutes();
            sum[1] += c.count();
        }
        Book book = new Book(catalogue.tasks());
        double minutes = 0;
        for (TaskCount task : question.tasks()) {
            double[] sum = sums.get(task.task());
            double one = sum == null
                    ? book.minutes(task.task(), question.instrument() == null ? "alto" : question.instrument())
                            .orElseThrow()
                    : sum[0] / sum[1];
            minutes += one * task.count();
        }
        return minutes;
    }

    public static void main(String[] args) {
        int n = 500;
        long seed = 1;
        int[] pasts = PAST;
        boolean slips = false;
        for (int i = 0; i + 1 < args.length; i += 2) {
            if (args[i].equals("--n")) {
                n = Integer.parseInt(args[i + 1]);
            } else if (args[i].equals("--past")) {
                pasts = new int[] {Integer.parseInt(args[i + 1])};
            } else if (args[i].equals("--slips")) {
                slips = true;
            } else if (args[i].equals("--seed")) {
                seed = Long.parseLong(args[i + 1]);
            }
        }
        System.out.printf("%d shops, number %d%n", n, seed);
        run(n, seed, pasts, slips)
                .forEach((past, t) -> System.out.printf(
                        "  %-16s %5d jobs: under P50 %.1f %%, under P80 %.1f %%; mean |ln error| %.3f,"
                                + " the plain mean's %.3f, the book's %.3f%n",
                        past == 0 ? "all" : past + " jobs before",
                        t.jobs,
                        t.under50(),
                        t.under80(),
                        t.error(),
                        t.meanError(),
                        t.bookError()));
    }
}
