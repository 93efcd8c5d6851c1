package hornbook.indexer.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

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
}
