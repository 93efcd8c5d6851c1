package hornbook.indexer.fit;

import hornbook.indexer.fit.RandomWork.Tool;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Every order of up to four operations, each ending at every figure that anything in the question names or can lead to.
 * Written without the planner: it knows neither its moves nor its ends, only the rules of work.
 */
final class Exhaustive {
    private static final int MOST = 4;
    private static final double TINY = 1e-7;

    private final RandomWork work;
    private final Map<Tool, List<Double>> figures = new HashMap<>();
    private double best = Double.POSITIVE_INFINITY;
    String how = "";
    long tried;

    private record Seen(State state, int last, int steps) {}

    private final Map<Seen, Double> seen = new HashMap<>();

    /** What a piece has come to. */
    private record State(
            double a, double b, double doubtA, double doubtB, String s, String t, boolean cut, boolean owed) {
        double of(String size) {
            return size.equals("a") ? a : b;
        }

        State sized(String size, double value, double doubt) {
            return size.equals("a")
                    ? new State(value, b, doubt, doubtB, s, t, cut, owed)
                    : new State(a, value, doubtA, doubt, s, t, cut, owed);
        }
    }

    Exhaustive(RandomWork work) {
        this.work = work;
    }

    /** Least minutes; infinite where nothing leads there. */
    double least() {
        State start = new State(mm("a"), mm("b"), 0, 0, word("s"), word("t"), false, false);
        go(start, new ArrayList<>(), 0);
        return best;
    }

    private double mm(String size) {
        return ((Value.Amount) work.has.get(size)).mm();
    }

    private String word(String name) {
        return work.has.get(name).shown();
    }

    private void go(State state, List<Tool> used, double spent) {
        tried++;
        if (spent >= best - TINY) {
            return;
        }
        if (good(state)) {
            best = spent;
            how = List.copyOf(used) + " " + state;
        }
        int last = used.isEmpty() ? -1 : work.tools.indexOf(used.getLast());
        Double cheaper = seen.get(new Seen(state, last, used.size()));
        if (used.size() == MOST || cheaper != null && cheaper <= spent + TINY) {
            return;
        }
        seen.put(new Seen(state, last, used.size()), spent);
        for (Tool tool : work.tools) {
            if (matters(tool) && !used.contains(tool) && (used.isEmpty() || inOrder(used.getLast(), tool))) {
                used.add(tool);
                apply(state, tool, used, spent);
                used.removeLast();
            }
        }
    }

    /** A size that nobody wants and no check looks at is left alone. */
    private boolean matters(Tool tool) {
        return tool.word() != null
                || work.wants.containsKey(tool.dimension())
                || tool.dimension().equals("a") && work.tools.stream().anyMatch(t -> t.bound() > 0);
    }

    /** The order of work; of two that stand alike in it, the one listed first. */
    private boolean inOrder(Tool before, Tool after) {
        return before.order() < after.order()
                || before.order() == after.order() && work.tools.indexOf(before) < work.tools.indexOf(after);
    }

    private void apply(State state, Tool tool, List<Tool> used, double spent) {
        if (tool.word() != null) {
            String now = tool.dimension().equals("s") ? state.s() : state.t();
            if (!now.equals(tool.word()) && (tool.bound() == 0 || state.a() <= tool.bound() + TINY)) {
                boolean s = tool.dimension().equals("s");
                State next = new State(
                        state.a(),
                        state.b(),
                        state.doubtA(),
                        state.doubtB(),
                        s ? tool.word() : state.s(),
                        s ? state.t() : tool.word(),
                        state.cut(),
                        state.owed());
                go(next, used, spent + tool.setUp() + tool.each());
            }
            return;
        }
        for (double end : ends(tool, state.of(tool.dimension()))) {
            double amount = Math.abs(end - state.of(tool.dimension()));
            boolean right = tool.way() * (end - state.of(tool.dimension())) > TINY;
            if (right && amount <= tool.max() + TINY && end >= tool.least() - TINY && end > 0) {
                double units = tool.step() > 0 ? Math.ceil(amount / tool.step() - TINY) : 1;
                State next = state.sized(tool.dimension(), end, tool.accuracy());
                go(end(next, tool), used, spent + tool.setUp() + tool.each() * units);
            }
        }
    }

    /** The first cut at an end takes the word there; a later one takes nothing more. */
    private static State end(State state, Tool tool) {
        if (!tool.takesEnd() || state.cut()) {
            return state;
        }
        boolean lost = state.s().equals("yes");
        return new State(
                state.a(), state.b(), state.doubtA(), state.doubtB(), "no", state.t(), true, state.owed() || lost);
    }

    private boolean good(State state) {
        return within("a", state.a(), state.doubtA())
                && within("b", state.b(), state.doubtB())
                && (!work.wants.containsKey("t") || state.t().equals("done"))
                && (!(work.wants.containsKey("s") || state.owed()) || state.s().equals("yes"));
    }

    private boolean within(String size, double value, double doubt) {
        return !(work.wants.get(size) instanceof Want.Between(double low, double high))
                || value - doubt >= low - TINY && value + doubt <= high + TINY;
    }

    /** What it is fixed to end at, and as far as it can go from where the piece stands. */
    private List<Double> ends(Tool tool, double from) {
        List<Double> all = new ArrayList<>(figures.computeIfAbsent(tool, this::fixed));
        all.add(RandomWork.round(from + tool.way() * tool.max()));
        return all;
    }

    /**
     * The middle and the ends of what is wanted, drawn in by its accuracy; the bounds of checks; and what lies its own
     * error, or another operation's whole reach, from where that other operation could finish.
     */
    private List<Double> fixed(Tool tool) {
        TreeSet<Double> all = new TreeSet<>();
        if (work.wants.get(tool.dimension()) instanceof Want.Between(double low, double high)) {
            all.addAll(last(low, high, tool.accuracy()));
            for (Tool other : work.tools) {
                if (other.dimension().equals(tool.dimension()) && 2 * other.accuracy() <= high - low + TINY) {
                    for (double end : last(low, high, other.accuracy())) {
                        all.addAll(List.of(end + tool.accuracy(), end - tool.accuracy()));
                        all.addAll(List.of(end + other.max(), end - other.max()));
                    }
                }
            }
        }
        if (tool.dimension().equals("a")) {
            work.tools.stream().filter(t -> t.bound() > 0).forEach(t -> all.add(t.bound()));
        }
        all.add(tool.least());
        all.removeIf(value -> value <= 0);
        return List.copyOf(all);
    }

    private static List<Double> last(double low, double high, double accuracy) {
        return List.of((low + high) / 2, low + accuracy, high - accuracy);
    }
}
