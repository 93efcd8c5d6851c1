package hornbook.shared.store;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.store.bench.DamageTrial;
import hornbook.shared.store.bench.KillTrial;
import hornbook.shared.store.bench.RandomDeeds;
import hornbook.shared.store.bench.ReaderFuzz;
import hornbook.shared.store.bench.Starts;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A seeded hundredth of the long trials. */
class TrialsTest {
    private static final long SEED = 20260930;

    @TempDir
    Path folder;

    @Test
    void noChangedContentGoesUnnoticedAsItWouldByTheDatabaseAlone() throws Exception {
        DamageTrial.Outcome outcome = DamageTrial.run(folder, 25, SEED);
        assertThat(outcome.changed()).isGreaterThan(5);
        assertThat(outcome.noticed()).isEqualTo(outcome.changed()).isGreaterThan(outcome.control());
    }

    @ParameterizedTest
    @ValueSource(strings = {"writes", "import", "backup", "restore", "migration"})
    void aKillLosesNothingAcknowledged(String what) throws Exception {
        assertThat(KillTrial.run(what, folder, 2, SEED).wrong()).isEmpty();
    }

    @Test
    void aFullDiskLosesNothingAndWorkGoesOn() throws Exception {
        FullDiskTrial.Outcome outcome = FullDiskTrial.run(folder, 5, SEED);
        assertThat(outcome.full()).isPositive();
        assertThat(outcome.wrong()).isEmpty();
    }

    @Test
    void countsAgreeWithTheLedgerWhateverIsUndone() {
        RandomDeeds.Outcome outcome = RandomDeeds.run(folder, 150, SEED);
        assertThat(outcome.undone()).isPositive();
        assertThat(outcome.wrong()).isEmpty();
    }

    @Test
    void noInputBreaksAReader() throws Exception {
        ReaderFuzz.Outcome outcome = ReaderFuzz.run(folder, Path.of("src/test/resources/small-shop"), 150, SEED);
        assertThat(outcome.refusals()).isPositive();
        assertThat(outcome.wrong()).isEmpty();
    }

    @Test
    void ofManyStartsOneWrites() throws Exception {
        assertThat(Starts.run(folder, 20)).isEqualTo(new Starts.Outcome(1, 19));
    }
}
