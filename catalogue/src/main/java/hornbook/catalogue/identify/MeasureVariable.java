package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Condition;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A measure, cut where the condition's ranges begin and end. */
record MeasureVariable(MeasureEvidence evidence, List<Double> cuts) implements Variable {
    @Override
    public String trait() {
        return evidence.trait().id();
    }

    @Override
    public int cells() {
        return cuts.size() - 1;
    }

    @Override
    public double[] chances(int entry, List<Seen> answers, @Nullable String except) {
        double[] cells = new double[cells()];
        for (int i = 0; i < cells.length; i++) {
            cells[i] = Math.max(0, evidence.within(entry, cuts.get(i), cuts.get(i + 1), answers, except));
        }
        double sum = Arrays.stream(cells).sum();
        return sum > 0 ? Arrays.stream(cells).map(c -> c / sum).toArray() : cells;
    }

    @Override
    public boolean holds(Condition leaf, int cell) {
        return leaf instanceof Condition.Between range
                && cuts.get(cell) >= range.low()
                && cuts.get(cell + 1) <= range.high();
    }

    @Override
    public double[][] joint(int entry, List<Seen> answers, @Nullable String except) {
        return Blurred.joint(chances(entry, answers, except), evidence.trait().miss());
    }
}
