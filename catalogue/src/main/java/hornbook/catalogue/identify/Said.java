package hornbook.catalogue.identify;

import java.util.List;
import java.util.Locale;

/** The answer in a line, as a repairer would say it. */
final class Said {
    private static final String[] NUMBERS = {"", "this", "two", "three", "four", "five", "six"};
    private static final double ENOUGH = 0.9;

    private Said() {}

    static String line(List<Candidate> candidates, double unlisted) {
        double sum = 0;
        for (int n = 0; n < Math.min(candidates.size(), NUMBERS.length - 1); n++) {
            if (unlisted > candidates.get(n).probability() && n == 0) {
                break;
            }
            sum += candidates.get(n).probability();
            if (sum >= ENOUGH) {
                return named(candidates, n + 1, sum);
            }
        }
        return unlisted >= 0.5
                ? "none of those listed, " + outOfTen(unlisted)
                : "not settled: it may still be any of "
                        + candidates.stream()
                                .filter(c -> c.probability() >= 0.01)
                                .count() + ", each with one chance in a hundred or more";
    }

    private static String named(List<Candidate> candidates, int n, double sum) {
        return n == 1
                ? candidates.getFirst().title() + ", " + outOfTen(sum)
                : "one of these " + NUMBERS[n] + ", " + outOfTen(sum);
    }

    private static String outOfTen(double p) {
        return p >= 0.995
                ? "99 in 100 or better"
                : p >= 0.95
                        ? String.format(Locale.ROOT, "%.0f in 100", Math.floor(p * 100))
                        : String.format(Locale.ROOT, "%.0f in 10", Math.floor(p * 10 + 0.5));
    }
}
