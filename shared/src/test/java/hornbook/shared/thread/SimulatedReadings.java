package hornbook.shared.thread;

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

/**
 * Simulated readings of the pairs that fool people: screws anywhere in their limits (ISO 965-1 6g, ASME B1.1 2A, BS 93),
 * wear of 0 to 0.03 mm, calliper ± 0.02 mm, pitch to ± 0.02 mm or by the leaf that fits best.
 */
final class SimulatedReadings {
    private static final Likelihood LIKELIHOOD = new Likelihood(Ask.SIZES);

    private final Random chance;

    SimulatedReadings(long seed) {
        chance = new Random(seed);
    }

    record Pair(Candidate one, Candidate other) {
        boolean told() {
            return Telling.pair(one, other, Side.SCREW).withGaugeInHand();
        }
    }

    /** What a reading of the one makes of both: their probabilities among all threads of the table. */
    record Read(double truth, double rival) {
        /** Neither is thought of. */
        boolean neither() {
            return truth + rival < 1e-9;
        }

        double share() {
            return truth / (truth + rival);
        }
    }

    /** @param measured by calliper over some turns; else by the leaf of a pitch gauge */
    Read read(Candidate truth, Candidate rival, boolean measured) {
        List<Candidate> all = LIKELIHOOD.candidates(reading(truth.thread(), measured));
        return new Read(probability(all, truth), probability(all, rival));
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

    static Candidate candidate(String designation) {
        Thread thread = Ask.SIZES.threads().designated(designation).orElseThrow();
        return new Candidate(thread, Ask.SIZES.limits().of(thread), 0, 0);
    }

    static List<Pair> pairs() throws IOException {
        try (CsvReader<NamedCsvRecord> csv = CsvReader.builder()
                .ofNamedCsvRecord(new InputStreamReader(
                        Thread.class.getResourceAsStream("thread_pairs.csv"), StandardCharsets.UTF_8))) {
            return csv.stream()
                    .map(row -> new Pair(candidate(row.getField("a")), candidate(row.getField("b"))))
                    .toList();
        }
    }
}
