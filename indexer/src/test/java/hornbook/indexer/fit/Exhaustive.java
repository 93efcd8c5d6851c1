package hornbook.indexer.fit;

import hornbook.indexer.fit.RandomWork.Tool;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The least minutes over every choice of operations and every end of each. Written without the planner: it knows
 * neither its moves nor its ends, only the rules of work. Words are tried one by one; what sizes cost is left to
 * {@link SizeWork}.
 */
final class Exhaustive {
    private final RandomWork work;
    private final List<Tool> inOrder;

    Exhaustive(RandomWork work) {
        this.work = work;
        // Of two that stand alike in the order of work, the one listed first: the sort is stable.
        inOrder =
                work.tools.stream().sorted(Comparator.comparingInt(Tool::order)).toList();
    }

    /** Least minutes; infinite where nothing leads there. */
    double least() {
        double best = Double.POSITIVE_INFINITY;
        for (Tool t : choices("t", work.wants.containsKey("t"))) {
            for (Tool s : choices("s", false)) {
                best = Math.min(best, minutes(t) + minutes(s) + sizes(t, s));
            }
        }
        return best;
    }

    /** No operation on the word, or one: a second would find it there. */
    private List<@Nullable Tool> choices(String word, boolean needed) {
        List<@Nullable Tool> all = new ArrayList<>();
        if (!needed) {
            all.add(null);
        }
        inOrder.stream().filter(tool -> tool.dimension().equals(word)).forEach(all::add);
        return all;
    }

    private static double minutes(@Nullable Tool word) {
        return word == null ? 0 : word.setUp() + word.each();
    }

    /** The first cut at an end takes s away; where it was there, or is wanted, it is put back after that cut. */
    private double sizes(@Nullable Tool t, @Nullable Tool s) {
        int place = s == null ? inOrder.size() : inOrder.indexOf(s);
        SizeWork.Least a = new SizeWork(work, inOrder, "a", t, place).least();
        SizeWork.Least b = new SizeWork(work, inOrder, "b", null, place).least();
        boolean there = work.has.get("s").shown().equals("yes");
        double uncut = a.uncut() + b.uncut();
        double cut = Math.min(a.cutBefore() + b.any(), a.any() + b.cutBefore());
        if (s != null) {
            return there ? cut : Math.min(uncut, cut);
        }
        if (there) {
            return uncut;
        }
        return work.wants.containsKey("s") ? Double.POSITIVE_INFINITY : a.any() + b.any();
    }
}
