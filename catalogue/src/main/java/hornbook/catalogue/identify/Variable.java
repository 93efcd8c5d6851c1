package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Condition;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Something a condition turns on, cut into the cases that the condition tells apart. */
sealed interface Variable permits ValueVariable, PartVariable, MeasureVariable, MarkVariable {
    /** Id of the trait. */
    String trait();

    int cells();

    /** Chance of each case for a horn of that entry, answers given. */
    double[] chances(int entry, List<Seen> answers, @Nullable String except);

    /** Whether a statement about it holds in a case. */
    boolean holds(Condition leaf, int cell);

    /** Chance of an answer to a further look together with each case; adds up to 1 over both. */
    double[][] joint(int entry, List<Seen> answers, @Nullable String except);
}
