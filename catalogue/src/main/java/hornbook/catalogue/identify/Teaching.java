package hornbook.catalogue.identify;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * What sure horns taught about one trait, entry by entry: (w · stated + count) / (w + looks).
 *
 * @param looks at sure horns, by entry
 * @param weights w by entry: how many looks the stated figure is worth
 */
record Teaching(Map<Integer, List<Taught>> looks, double[] weights) {
    /** Nothing learned. */
    static final Teaching NONE = new Teaching(Map.of(), new double[0]);

    /** A stated figure as the looks have moved it. */
    double mix(int entry, double stated, @Nullable String except, ToDoubleFunction<Seen> count) {
        List<Taught> own = looks.get(entry);
        if (own == null) {
            return stated;
        }
        double sum = 0;
        int n = 0;
        for (Taught taught : own) {
            if (!taught.horn().equals(except)) {
                sum += count.applyAsDouble(taught.seen());
                n++;
            }
        }
        return n == 0 ? stated : (weights[entry] * stated + sum) / (weights[entry] + n);
    }

    /** The looks that count for an entry. */
    List<Taught> of(int entry, @Nullable String except) {
        List<Taught> own = looks.getOrDefault(entry, List.of());
        return except == null || own.stream().noneMatch(t -> t.horn().equals(except))
                ? own
                : own.stream().filter(t -> !t.horn().equals(except)).toList();
    }

    double weight(int entry) {
        return weights[entry];
    }
}
