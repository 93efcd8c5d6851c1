package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Condition;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Whether a value of a `many` trait is there. */
record PartVariable(PartsEvidence evidence, int value) implements Variable {
    @Override
    public String trait() {
        return evidence.trait().id();
    }

    @Override
    public int cells() {
        return 2;
    }

    @Override
    public double[] chances(int entry, List<Seen> answers, @Nullable String except) {
        double there = evidence.there(entry, value, answers, except);
        return new double[] {1 - there, there};
    }

    @Override
    public boolean holds(Condition leaf, int cell) {
        return cell == 1;
    }

    @Override
    public double[][] joint(int entry, List<Seen> answers, @Nullable String except) {
        return Blurred.joint(chances(entry, answers, except), evidence.trait().miss());
    }
}
