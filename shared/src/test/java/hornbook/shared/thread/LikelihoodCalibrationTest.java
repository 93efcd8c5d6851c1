package hornbook.shared.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import hornbook.shared.measure.Length;
import hornbook.shared.measure.Limits;
import hornbook.shared.measure.Measured;
import hornbook.shared.measure.Thread;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Simulated readings of the pairs that fool people: screws anywhere in their limits (ISO 965-1 6g, ASME B1.1 2A, BS 93),
 * wear of 0 to 0.03 mm, calliper ± 0.02 mm, pitch to ± 0.02 mm or by the leaf that fits best.
 */
class LikelihoodCalibrationTest {
    private static final int READINGS = 60;
    private static final Likelihood LIKELIHOOD = new Likelihood(Ask.SIZES);

    private record Pair(Candidate one, Candidate other) {}

    private final Random chance = new Random(1953);

    /** What it calls p likely is true about p of the time, over all pairs and both ways of reading the pitch. */
    @Test
    void probabilitiesMeanWhatTheySay() throws IOException {
        double[] said = new double[10];
        int[] right = new int[10];
        int[] all = new int[10];
        int neither = 0;
        for (Pair pair : pairs()) {
            for (int round = 0; round < READINGS; round++) {
                Candidate truth = round % 2 == 0 ? pair.one() : pair.other();
                Candidate rival = round % 2 == 0 ? pair.other() : pair.one();
                List<Candidate> read = LIKELIHOOD.candidates(reading(truth.thread(), round % 4 < 2));
                double mine = probability(read, truth);
                double theirs = probability(read, rival);
                if (mine + theirs < 1e-9) {
                    neither++;
                    continue;
                }
                count(mine / (mine + theirs), true, said, right, all);
                count(theirs / (mine + theirs), false, said, right, all);
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
        for (Pair pair : pairs()) {
            if (Telling.pair(pair.one(), pair.other(), Side.SCREW).withGaugeInHand()) {
                continue;
            }
            hard++;
            int wrong = 0;
            for (int round = 0; round < READINGS; round++) {
                Candidate truth = round % 2 == 0 ? pair.one() : pair.other();
                Candidate rival = round % 2 == 0 ? pair.other() : pair.one();
                List<Candidate> read = LIKELIHOOD.candidates(reading(truth.thread(), true));
                wrong += probability(read, rival) > 0.9 ? 1 : 0;
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
        return Telling.pair(candidate(one), candidate(other), Side.SCREW).withGaugeInHand();
    }

    private ThreadQuestion reading(Thread thread, boolean measured) {
        Limits crest = Ask.SIZES.limits().of(thread).screwMajor();
        double across = crest.least().mm() + chance.nextDouble() * crest.width().mm();
        double read = across - 0.03 * chance.nextDouble() + 0.02 * chance.nextGaussian();
        return ThreadQuestion.of(
                Side.SCREW, Measured.single(Length.ofMillimetres(read)), measured ? measured(thread) : leaf(thread));
    }

    private PitchReading measured(Thread thread) {
        double pitch = thread.pitch().mm() + 0.02 * chance.nextGaussian();
        return new PitchReading.Measured(Length.ofMillimetres(pitch), ThreadQuestionReader.PITCH_SIGMA);
    }

    private PitchReading leaf(Thread thread) {
        double felt = thread.pitch().mm() + 0.01 * chance.nextGaussian();
        int best = 4;
        for (int leaf : new int[] {
            18, 20, 22, 24, 26, 27, 28, 30, 32, 34, 36, 38, 40, 42, 44, 46, 48, 50, 52, 54, 56, 60, 64, 72, 80, 84
        }) {
            best = Math.abs(25.4 / leaf - felt) < Math.abs(25.4 / best - felt) ? leaf : best;
        }
        return new PitchReading.Leaf(best);
    }

    private static double probability(List<Candidate> read, Candidate thread) {
        return read.stream()
                .filter(candidate -> candidate.thread().equals(thread.thread()))
                .mapToDouble(Candidate::probability)
                .sum();
    }

    private static Candidate candidate(String designation) {
        Thread thread = Ask.SIZES.threads().designated(designation).orElseThrow();
        return new Candidate(thread, Ask.SIZES.limits().of(thread), 0, 0);
    }

    private static List<Pair> pairs() throws IOException {
        try (CsvReader<NamedCsvRecord> csv = CsvReader.builder()
                .ofNamedCsvRecord(new InputStreamReader(
                        Thread.class.getResourceAsStream("thread_pairs.csv"), StandardCharsets.UTF_8))) {
            return csv.stream()
                    .map(row -> new Pair(candidate(row.getField("a")), candidate(row.getField("b"))))
                    .toList();
        }
    }
}
