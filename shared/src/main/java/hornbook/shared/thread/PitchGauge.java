package hornbook.shared.thread;

import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** How well a pitch that was read agrees with a thread's true pitch. */
final class PitchGauge {
    /** The usual leaves of inch gauges, in threads per inch (common practice, from memory). */
    private static final int[] LEAVES = {
        4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 16, 18, 20, 22, 24, 26, 27, 28, 30, 32, 34, 36, 38, 40, 42, 44, 46, 48,
        50, 52, 54, 56, 60, 64, 72, 80, 84
    };
    /** A leaf held on some ten turns shows a tenth of a millimetre of drift. */
    static final double LEAF_SIGMA = 0.01;
    /** Chance of taking up the leaf next to the right one, each side. */
    private static final double SLIP = 0.02;

    private PitchGauge() {}

    /** Likelihood of the reading on a thread of this pitch (mm), up to a factor that is the same for all threads. */
    static double likelihood(PitchReading reading, double pitch) {
        return switch (reading) {
            case PitchReading.Measured measured -> bell(deviations(reading, pitch));
            case PitchReading.Leaf(int perInch) -> leaf(perInch, pitch);
        };
    }

    /** How many standard deviations the reading lies from a pitch. */
    static double deviations(PitchReading reading, double pitch) {
        double sigma = reading instanceof PitchReading.Measured measured
                ? measured.sigma().mm()
                : LEAF_SIGMA;
        return (reading.mm() - pitch) / sigma;
    }

    /** The leaf that fits best is taken up, or one of its neighbours; never one further off. */
    private static double leaf(int read, double pitch) {
        NavigableSet<Double> pitches = leaves(read);
        double best = nearest(pitches, pitch);
        double[] possible = Stream.of(pitches.lower(best), Double.valueOf(best), pitches.higher(best))
                .flatMap(Stream::ofNullable)
                .mapToDouble(Double::doubleValue)
                .toArray();
        double seen = 25.4 / read;
        if (DoubleStream.of(possible).noneMatch(leaf -> leaf == seen)) {
            return 0;
        }
        double all = DoubleStream.of(possible).map(leaf -> fit(leaf, pitch)).sum();
        return (1 - 2 * SLIP) * fit(seen, pitch) / all + SLIP;
    }

    private static NavigableSet<Double> leaves(int read) {
        NavigableSet<Double> pitches = new TreeSet<>();
        for (int leaf : LEAVES) {
            pitches.add(25.4 / leaf);
        }
        pitches.add(25.4 / read);
        return pitches;
    }

    private static double nearest(NavigableSet<Double> pitches, double pitch) {
        @Nullable Double under = pitches.floor(pitch);
        @Nullable Double over = pitches.ceiling(pitch);
        if (under == null || over == null) {
            return under != null ? under : pitches.first();
        }
        return pitch - under < over - pitch ? under : over;
    }

    private static double fit(double leaf, double pitch) {
        return bell((leaf - pitch) / LEAF_SIGMA);
    }

    private static double bell(double z) {
        return Math.exp(-z * z / 2);
    }
}
