package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Condition;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A trait of one value: the values that the condition names, and all others as the last case. */
final class ValueVariable implements Variable {
    private final ChoiceEvidence evidence;
    private final List<String> named;
    private final int[] cells;

    ValueVariable(ChoiceEvidence evidence, List<String> named) {
        this.evidence = evidence;
        this.named = List.copyOf(named);
        this.cells = evidence.values().stream().mapToInt(this::cell).toArray();
    }

    private int cell(String value) {
        int at = named.indexOf(value);
        return at < 0 ? named.size() : at;
    }

    @Override
    public String trait() {
        return evidence.trait().id();
    }

    @Override
    public int cells() {
        return named.size() + 1;
    }

    @Override
    public double[] chances(int entry, List<Seen> answers, @Nullable String except) {
        double[] truth = evidence.weighed(entry, answers, except);
        double[] chances = new double[cells()];
        double sum = 0;
        for (int v = 0; v < truth.length; v++) {
            chances[cells[v]] += truth[v];
            sum += truth[v];
        }
        for (int c = 0; c < chances.length; c++) {
            chances[c] /= sum;
        }
        return chances;
    }

    @Override
    public boolean holds(Condition leaf, int cell) {
        return leaf instanceof Condition.Is is
                && cell < named.size()
                && named.get(cell).equals(is.value());
    }

    @Override
    public double[][] joint(int entry, List<Seen> answers, @Nullable String except) {
        double[] truth = evidence.weighed(entry, answers, except);
        double sum = 0;
        for (double t : truth) {
            sum += t;
        }
        double[][] joint = new double[truth.length][cells()];
        for (int v = 0; v < truth.length; v++) {
            for (int o = 0; o < truth.length; o++) {
                joint[o][cells[v]] += truth[v] / sum * evidence.misses().given(v, o);
            }
        }
        return joint;
    }
}
