package hornbook.shared.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.shared.thread.SimulatedReadings.Pair;
import hornbook.shared.thread.SimulatedReadings.Read;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Simulated readings of the pairs that fool people; {@link ThreadReadingsBench} is the long form. */
class LikelihoodCalibrationTest {
    private static final int READINGS = 60;

    private final SimulatedReadings readings = new SimulatedReadings(1953);

    /** What it calls p likely is true about p of the time, over all pairs and both ways of reading the pitch. */
    @Test
    void probabilitiesMeanWhatTheySay() throws IOException {
        double[] said = new double[10];
        int[] right = new int[10];
        int[] all = new int[10];
        int neither = 0;
        for (Pair pair : SimulatedReadings.pairs()) {
            for (int round = 0; round < READINGS; round++) {
                Candidate truth = round % 2 == 0 ? pair.one() : pair.other();
                Candidate rival = round % 2 == 0 ? pair.other() : pair.one();
                Read read = readings.read(truth, rival, round % 4 < 2);
                if (read.neither()) {
                    neither++;
                    continue;
                }
                count(read.share(), true, said, right, all);
                count(1 - read.share(), false, said, right, all);
            }
        }
        assertThat(neither).as("a leaf two off").isLessThan(30);
        for (int bin = 0; bin < 10; bin++) {
            double mean = said[bin] / Math.max(1, all[bin]);
            double found = right[bin] / (double) Math.max(1, all[bin]);
            assertThat(found).as("said %.3f of %d readings", mean, all[bin]).isCloseTo(mean, within(slack(all[bin])));
        }
    }

    private static double slack(int count) {
        return 0.03 + 1 / Math.sqrt(Math.max(1, count));
    }

    private static void count(double share, boolean is, double[] said, int[] right, int[] all) {
        int bin = Math.min(9, (int) (share * 10));
        said[bin] += share;
        all[bin]++;
        right[bin] += is ? 1 : 0;
    }

    /** Pairs that calliper and gauge cannot part never get a wrong answer said with nine parts in ten. */
    @Test
    void isNeverSureAndWrongWhereTheGaugeCannotTell() throws IOException {
        int hard = 0;
        for (Pair pair : SimulatedReadings.pairs()) {
            if (pair.told()) {
                continue;
            }
            hard++;
            int wrong = 0;
            for (int round = 0; round < READINGS; round++) {
                Candidate truth = round % 2 == 0 ? pair.one() : pair.other();
                Candidate rival = round % 2 == 0 ? pair.other() : pair.one();
                wrong += readings.read(truth, rival, true).rival() > 0.9 ? 1 : 0;
            }
            assertThat(wrong)
                    .as(pair.one().thread().designation() + " / "
                            + pair.other().thread().designation())
                    .isLessThanOrEqualTo(READINGS / 20);
        }
        assertThat(hard).isGreaterThan(12);
    }

    /** The trade notes' last column: what a calliper ± 0.02 and a pitch gauge can part, and what they cannot. */
    @Test
    void agreesWithTheNotesOnWhatCanBeTold() {
        assertThat(tells("M2.5x0.45", "3-56 UNF")).isFalse();
        assertThat(tells("M2.2x0.45", "2-56 UNC")).isFalse();
        assertThat(tells("M1.7x0.35", "10 BA")).isFalse();
        assertThat(tells("M6x1", "0 BA")).isFalse();
        assertThat(tells("5-40 UNC", "1/8-40 BSW")).isFalse();
        assertThat(tells("1/4-20 UNC", "1/4-20 BSW")).isFalse();
        assertThat(tells("4-48 UNF", "6 BA")).isFalse();
        assertThat(tells("5-44 UNF", "5 BA")).isFalse();
        assertThat(tells("M4x0.7", "8-36 UNF")).isTrue();
        assertThat(tells("M2x0.4", "2-64 UNF")).isTrue();
        assertThat(tells("M5x0.8", "10-32 UNF")).isTrue();
        assertThat(tells("M4x0.7", "3 BA")).isTrue();
        assertThat(tells("M2.5x0.45", "7 BA")).isTrue();
        assertThat(tells("M2.5x0.45", "6 BA")).isTrue();
        assertThat(tells("M3x0.5", "4-48 UNF")).isTrue();
        assertThat(tells("M3.5x0.6", "6-40 UNF")).isTrue();
        assertThat(tells("M3.5x0.6", "6-32 UNC")).isTrue();
        assertThat(tells("M3.5x0.6", "4 BA")).isTrue();
    }

    private static boolean tells(String one, String other) {
        return new Pair(SimulatedReadings.candidate(one), SimulatedReadings.candidate(other)).told();
    }
}
