package hornbook.shared.measure;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The threads we know: ISO metric M1 to M8 with the withdrawn sizes of old horns, Unified to 1/4 with the sizes of
 * 1907, BA, Whitworth, British fine, model engineer's and Loewenherz. Each row names its standard.
 */
public record ThreadTable(List<Thread> threads) {

    public ThreadTable {
        threads = List.copyOf(threads);
    }

    static ThreadTable load() {
        return new ThreadTable(Table.rows("threads.csv", Thread::of));
    }

    /** The thread with exactly this designation. */
    public Optional<Thread> designated(String designation) {
        return threads.stream()
                .filter(thread -> thread.designation().equals(designation))
                .findFirst();
    }

    /** Every thread a writing may mean, in the order of the table; empty if there is none. */
    List<Thread> meant(ThreadWriting writing) {
        List<Thread> fits = threads.stream().filter(writing::allows).toList();
        if (writing.pitch().isPresent() || writing.series().isPresent()) {
            return fits;
        }
        List<Thread> coarse =
                fits.stream().filter(thread -> thread.series().equals("coarse")).toList();
        return coarse.isEmpty() ? fits : coarse;
    }

    /** The threads most like one that does not exist, nearest first. */
    List<Thread> nearest(ThreadWriting writing, int most) {
        return threads.stream()
                .filter(thread -> writing.systems().contains(thread.system()))
                .sorted(Comparator.comparingDouble(writing::distance))
                .limit(most)
                .toList();
    }
}
