package hornbook.catalogue.estimate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Clocks too far off to be believed: an hour typed as sixty, a clock that ran over the weekend. One such time would move
 * every estimate of the shop.
 *
 * <p>Left out is what has a modified z-score over 3.5: its distance from the median, divided by the median distance
 * (Iglewicz and Hoaglin, How to Detect and Handle Outliers, 1993; also NIST/SEMATECH e-Handbook, 1.3.5.17; from memory).
 * Medians, as a mean and a standard deviation would be moved by the very time that is looked for. Of honest normal times
 * one in two thousand lies so far off. The distance is that of ln(minutes / book) from what is usual for the task, in
 * units of what the book and the usual effects of instrument, make, model, person and job allow; never judged closer than
 * these allow, as a few like times would make the next one strange.
 */
final class FarOff {
    private static final double LIMIT = 3.5;

    /** A median distance of normal values, made a standard deviation. */
    private static final double OF_NORMAL = 1 / 0.6745;

    /** The book's word counts as so many clocks of a task: its first clock cannot say what is usual. */
    private static final int BOOK_COUNTS = 2;

    private final Book book;

    FarOff(Book book) {
        this.book = book;
    }

    /** Clocks to go by, and those left out; both in the order given. */
    record Parted(List<Clocked> kept, List<Clocked> leftOut) {}

    Parted part(List<Clocked> clocked) {
        List<Clocked> known = clocked.stream().filter(book::knows).toList();
        Map<String, List<Double>> ofTask = new HashMap<>();
        known.forEach(c -> ofTask.computeIfAbsent(c.task(), t -> book()).add(book.log(c)));
        Map<String, Double> usual = new HashMap<>();
        ofTask.forEach((task, logs) -> usual.put(task, median(logs)));
        Map<Clocked, Double> apart = new HashMap<>();
        known.forEach(c -> apart.put(c, Math.abs(book.log(c) - usual.getOrDefault(c.task(), 0.0)) / spread(c)));
        double far = LIMIT * Math.max(1, OF_NORMAL * median(new ArrayList<>(apart.values())));
        List<Clocked> kept = new ArrayList<>();
        List<Clocked> leftOut = new ArrayList<>();
        clocked.forEach(c -> (apart.getOrDefault(c, 0.0) > far ? leftOut : kept).add(c));
        return new Parted(kept, leftOut);
    }

    private static List<Double> book() {
        List<Double> logs = new ArrayList<>();
        for (int i = 0; i < BOOK_COUNTS; i++) {
            logs.add(0.0);
        }
        return logs;
    }

    private double spread(Clocked c) {
        double sigma = book.task(c.task()).sigma();
        return Math.sqrt(sigma * sigma + History.USUAL_SPREAD);
    }

    private static double median(List<Double> values) {
        double[] sorted =
                values.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        int middle = sorted.length / 2;
        return sorted.length == 0
                ? 0
                : sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }
}
