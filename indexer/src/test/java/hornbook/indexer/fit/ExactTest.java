package hornbook.indexer.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The planner against an exhaustive search that knows nothing of it; the long form is {@link PlannerTrial}. */
class ExactTest {
    private static final long SEED = 20_261;

    @Test
    void equalsExhaustiveSearch() {
        PlannerTrial trial = new PlannerTrial();
        List<String> faults = new ArrayList<>();
        for (long seed = SEED; seed < SEED + 100; seed++) {
            String fault = trial.one(seed);
            if (fault != null) {
                faults.add(seed + ": " + fault);
            }
        }
        assertThat(faults).isEmpty();
        assertThat(trial.feasible).as("enough sets have a plan to compare").isGreaterThan(20);
    }

    /** The bound of an operation's own check may lie far from all that is wanted, and be the place to end at. */
    @ParameterizedTest
    @ValueSource(longs = {2995, 9356})
    void endsAtItsOwnBound(long seed) {
        assertThat(new PlannerTrial().one(seed)).isNull();
    }

    /** A size that is as wanted is cut all the same, so that what goes with the end can still be put back. */
    @Test
    void cutsFirstWhatIsPutBack() {
        assertThat(new PlannerTrial().one(3302)).isNull();
    }

    /** Nothing leads there; once no answer in 20 s. */
    @ParameterizedTest
    @ValueSource(longs = {2671, 3054, 9444})
    void saysThatNothingLeadsThere(long seed) {
        assertThat(new PlannerTrial().one(seed)).isNull();
    }
}
