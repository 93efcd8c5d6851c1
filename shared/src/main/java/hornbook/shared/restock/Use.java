package hornbook.shared.restock;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * What was used of an article.
 *
 * @param months pieces a month, oldest first, the last month ending today
 * @param taken how often, and how much at a time
 * @param last the day of the last use
 */
record Use(int[] months, Takings taken, @Nullable LocalDate last) {
    int times() {
        return taken.times();
    }

    int pieces() {
        return Arrays.stream(months).sum();
    }

    double mean() {
        return (double) pieces() / months.length;
    }

    /** Of a month's pieces, over the months less one; 0 with less than two months. */
    double variance() {
        double mean = mean();
        double squares =
                Arrays.stream(months).mapToDouble(m -> (m - mean) * (m - mean)).sum();
        return months.length < 2 ? 0 : squares / (months.length - 1);
    }

    /** Is the last use older than twice the mean gap between months with use? */
    boolean fading() {
        int hits = (int) Arrays.stream(months).filter(m -> m > 0).count();
        int last = IntStream.range(0, months.length)
                .filter(i -> months[i] > 0)
                .max()
                .orElse(-1);
        return hits > 0 && months.length - 1 - last > 2.0 * (last + 1) / hits;
    }
}
