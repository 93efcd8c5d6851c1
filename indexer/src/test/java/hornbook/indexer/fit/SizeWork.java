package hornbook.indexer.fit;

import hornbook.indexer.fit.RandomWork.Tool;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/**
 * The least minutes to bring one size of a piece where it is wanted, every end tried on a grid of a four-hundredth of a
 * millimetre. All figures of {@link RandomWork} are hundredths: limits, bounds and started steps fall on the grid, and
 * three more cuts go between two of them, so no end off the grid is cheaper. By dynamic programming (Bellman 1957): for
 * each size the piece may have come to, and the operation that brought it there, the least minutes so far.
 */
final class SizeWork {
    private static final int GRID = 400;
    private static final int SIZES = 10 * GRID;

    /** How far the ends of the piece have been cut. */
    private enum Cut {
        NONE,
        BEFORE,
        AFTER
    }

    /**
     * Least minutes.
     *
     * @param uncut with no cut at an end
     * @param cutBefore with the first cut before the operation that puts the word back
     * @param any either way, or with the first cut after it
     */
    record Least(double uncut, double cutBefore, double any) {}

    /** The operation that last changed the size says how sure it is: the next takes no less than that. */
    private record State(Cut cut, @Nullable Tool last) {}

    private final RandomWork work;
    private final List<Tool> inOrder;
    private final String size;
    private final @Nullable Tool checks;
    private final int place;
    private final Map<State, double[]> now = new HashMap<>();

    /**
     * @param checks the operation that looks at the size in its turn; null for none
     * @param place of the operation that puts back what a cut takes away
     */
    SizeWork(RandomWork work, List<Tool> inOrder, String size, @Nullable Tool checks, int place) {
        this.work = work;
        this.inOrder = inOrder;
        this.size = size;
        this.checks = checks;
        this.place = place;
    }

    Least least() {
        double[] start = never();
        start[units(((Value.Amount) work.has.get(size)).mm())] = 0;
        now.put(new State(Cut.NONE, null), start);
        for (int i = 0; i < inOrder.size(); i++) {
            Tool tool = inOrder.get(i);
            if (tool.equals(checks) && tool.bound() > 0) {
                now.values().forEach(minutes -> Arrays.fill(minutes, units(tool.bound()) + 1, SIZES, never()[0]));
            } else if (tool.dimension().equals(size)) {
                work(tool, i);
            }
        }
        return new Least(
                wanted(Cut.NONE),
                wanted(Cut.BEFORE),
                Math.min(wanted(Cut.NONE), Math.min(wanted(Cut.BEFORE), wanted(Cut.AFTER))));
    }

    private static int units(double mm) {
        return (int) Math.round(Math.min(mm, 9) * GRID);
    }

    private static double[] never() {
        double[] minutes = new double[SIZES];
        Arrays.fill(minutes, Double.POSITIVE_INFINITY);
        return minutes;
    }

    private double wanted(Cut cut) {
        return now.entrySet().stream()
                .filter(entry -> entry.getKey().cut() == cut)
                .mapToDouble(entry -> wanted(entry.getKey().last(), entry.getValue()))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private double wanted(@Nullable Tool last, double[] minutes) {
        if (!(work.wants.get(size) instanceof Want.Between(double low, double high))) {
            return DoubleStream.of(minutes).min().orElseThrow();
        }
        int doubt = last == null ? 0 : units(last.accuracy());
        double least = Double.POSITIVE_INFINITY;
        for (int at = units(low) + doubt; at <= units(high) - doubt; at++) {
            least = Math.min(least, minutes[at]);
        }
        return least;
    }

    private void work(Tool tool, int at) {
        Map<State, double[]> after = new HashMap<>();
        now.forEach((state, minutes) -> {
            Cut cut = state.cut() != Cut.NONE || !tool.takesEnd() ? state.cut() : at < place ? Cut.BEFORE : Cut.AFTER;
            after.merge(
                    new State(cut, tool),
                    worked(
                            tool,
                            minutes,
                            state.last() == null ? 0 : units(state.last().accuracy())),
                    SizeWork::least);
        });
        now.putAll(after);
    }

    private static double[] least(double[] one, double[] other) {
        double[] least = new double[SIZES];
        Arrays.setAll(least, i -> Math.min(one[i], other[i]));
        return least;
    }

    private static double[] worked(Tool tool, double[] before, int least) {
        double[] after = tool.way() < 0 ? smaller(tool, before, least) : turned(smaller(tool, turned(before), least));
        Arrays.fill(after, 0, Math.max(1, units(tool.least())), Double.POSITIVE_INFINITY);
        return after;
    }

    private static double[] turned(double[] minutes) {
        double[] turned = new double[SIZES];
        Arrays.setAll(turned, i -> minutes[SIZES - 1 - i]);
        return turned;
    }

    private static double[] smaller(Tool tool, double[] before, int least) {
        int most = units(tool.max());
        int step = tool.step() > 0 ? Math.min(units(tool.step()), most) : most;
        Map<Integer, double[]> leastAbove = new HashMap<>();
        double[] after = never();
        for (int begun = 0; begun < most; begun += step) {
            int from = Math.max(begun, least - 1);
            int to = Math.min(begun + step, most);
            if (from < to) {
                double minutes = tool.setUp() + tool.each() * (1 + begun / step);
                double[] above = leastAbove.computeIfAbsent(to - from, far -> leastAbove(before, far));
                for (int at = 0; at + from < SIZES; at++) {
                    after[at] = Math.min(after[at], above[at + from] + minutes);
                }
            }
        }
        return after;
    }

    /** For each size the least of those above it, no more than so far. */
    private static double[] leastAbove(double[] minutes, int far) {
        double[] least = never();
        Deque<Integer> falling = new ArrayDeque<>();
        for (int at = SIZES - 2; at >= 0 && far > 0; at--) {
            while (!falling.isEmpty() && minutes[falling.getLast()] >= minutes[at + 1]) {
                falling.removeLast();
            }
            falling.addLast(at + 1);
            while (falling.getFirst() > at + far) {
                falling.removeFirst();
            }
            least[at] = minutes[falling.getFirst()];
        }
        return least;
    }
}
