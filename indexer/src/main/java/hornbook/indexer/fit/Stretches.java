package hornbook.indexer.fit;

import hornbook.indexer.fit.Want.Between;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The least minutes that are still to be spent on a size, by how large it is: stretches that do not overlap, smallest
 * size first. Exact, since minutes of work jump from unit to unit and are the same in between.
 */
record Stretches(List<Stretch> all) {
    /** Two stretches lie this far apart, mm: a point belongs to the cheaper one. */
    private static final double APART = 1e-9;

    Stretches {
        all = List.copyOf(all);
    }

    /** Sizes from which the same minutes are to be spent. */
    record Stretch(double low, double high, double minutes) {}

    /** Nothing more, where the last operation leaves it as wanted for sure. */
    static Stretches wanted(Between want, Move last) {
        double low = want.low() + last.accuracy();
        double high = want.high() - last.accuracy();
        return new Stretches(
                low > high + Formula.NOTHING ? List.of() : List.of(new Stretch(low, Math.max(low, high), 0)));
    }

    /** The cheapest of any that overlap. */
    static Stretches least(List<Stretch> any) {
        TreeMap<Double, Stretch> taken = new TreeMap<>();
        any.stream().sorted(Comparator.comparingDouble(Stretch::minutes)).forEach(stretch -> fill(stretch, taken));
        return new Stretches(new ArrayList<>(taken.values()));
    }

    private static void fill(Stretch stretch, TreeMap<Double, Stretch> taken) {
        double low = stretch.low();
        while (low <= stretch.high() && low < Double.POSITIVE_INFINITY) {
            Map.Entry<Double, Stretch> before = taken.floorEntry(low);
            if (before != null && before.getValue().high() + APART > low) {
                low = past(before.getValue().high());
                continue;
            }
            Double next = taken.higherKey(low);
            double high = next == null ? stretch.high() : Math.min(stretch.high(), next - APART);
            if (high >= low) {
                taken.put(low, new Stretch(low, high, stretch.minutes()));
            }
            low = past(Math.max(high, low));
        }
    }

    private static double past(double mm) {
        return Math.max(mm + APART, Math.nextUp(mm));
    }

    Stretches within(Between room) {
        return within(List.of(room));
    }

    /** Only what lies in one of these, which do not overlap. */
    Stretches within(List<Between> rooms) {
        List<Stretch> inside = new ArrayList<>();
        for (Between room : rooms) {
            for (Stretch stretch : all) {
                double low = Math.max(stretch.low(), room.low());
                double high = Math.min(stretch.high(), room.high());
                if (low <= high) {
                    inside.add(new Stretch(low, high, stretch.minutes()));
                } else if (low <= high + Formula.NOTHING) {
                    inside.add(new Stretch(low, low, stretch.minutes()));
                }
            }
        }
        return new Stretches(inside);
    }

    /** By so many minutes. */
    Stretches dearer(double minutes) {
        return new Stretches(all.stream()
                .map(stretch -> new Stretch(stretch.low(), stretch.high(), stretch.minutes() + minutes))
                .toList());
    }

    /** Minutes from a size; infinite where nothing leads from it. */
    double minutes(double mm) {
        double least = Double.POSITIVE_INFINITY;
        for (Stretch stretch : all) {
            if (stretch.low() - Formula.NOTHING <= mm && mm <= stretch.high() + Formula.NOTHING) {
                least = Math.min(least, stretch.minutes());
            }
        }
        return least;
    }
}
