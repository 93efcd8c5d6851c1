package hornbook.indexer.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A seeded hundredth of the trials; each control shows that the trial would notice. */
class IndexTrialsTest {
    @TempDir
    Path folder;

    @Test
    void aDamagedIndexIsNeverTaken() throws Exception {
        var outcome = IndexDamageTrial.run(folder, 30, 7, 30);
        assertThat(outcome.trusted()).isZero();
        assertThat(outcome.wrong()).isEmpty();
        assertThat(outcome.opened()).isPositive();
        assertThat(outcome.unnoticed()).as("control").isPositive();
    }

    @Test
    void aFullDiskLosesNothing() {
        var outcome = FullDiskTrial.run(folder, 3, 7);
        assertThat(outcome.lost()).isZero();
        assertThat(outcome.refused()).isPositive();
        assertThat(outcome.saved()).isPositive();
        assertThat(outcome.control()).as("control").isPositive();
    }

    @Test
    void aKilledProcessLosesNothing() throws Exception {
        var outcome = IndexKillTrial.run(folder, 2, 7);
        assertThat(outcome.lost()).isZero();
        assertThat(outcome.different()).isZero();
        assertThat(outcome.acknowledged()).isPositive();
        assertThat(outcome.control()).as("control").isPositive();
    }
}
