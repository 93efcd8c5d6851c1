package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Mistake;
import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.entry.TraitValue;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** How looks at a trait of one value go wrong: chance of each answer for each truth. */
final class Misses {
    private final List<String> values;
    private final double[][] given;

    /** @param absent whether "does not apply" is among what can be so */
    Misses(Trait trait, boolean absent) {
        List<String> all =
                new ArrayList<>(trait.values().stream().map(TraitValue::id).toList());
        if (absent) {
            all.add(Seen.Absent.WORD);
        }
        this.values = List.copyOf(all);
        this.given = new double[all.size()][all.size()];
        for (int truth = 0; truth < given.length; truth++) {
            fill(trait, truth);
        }
    }

    private void fill(Trait trait, int truth) {
        double[] row = given[truth];
        Arrays.fill(row, trait.miss() / Math.max(1, row.length - 1));
        row[truth] = row.length == 1 ? 1 : 1 - trait.miss();
        for (Mistake mistake : trait.mistakes()) {
            int seen = values.indexOf(mistake.seen());
            if (mistake.truth().equals(values.get(truth)) && seen >= 0) {
                row[truth] -= mistake.rate();
                row[seen] += mistake.rate();
            }
        }
    }

    List<String> values() {
        return values;
    }

    /** Chance that a look at the true value is answered so. */
    double given(int truth, int answer) {
        return given[truth][answer];
    }

    int size() {
        return values.size();
    }
}
