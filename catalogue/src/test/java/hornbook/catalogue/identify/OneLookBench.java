package hornbook.catalogue.identify;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * One look: posterior and what all unseen looks would tell, against reading the matrix once at the memory bandwidth
 * measured here (floor) and the same in plain maps (peer); each in turn, rounds after warming. Arguments: numbers of
 * entries.
 */
public final class OneLookBench {
    private static final int TRAITS = 60;
    private static final int ROUNDS = 9;

    private final int entries;
    private final int[] sizes;
    private final LookMatrix matrix;
    private final double[] prior;
    private final double[][] seen;
    private final float[] memory;
    private final double[][][] doubles;

    private OneLookBench(int entries, long seed) {
        Random random = new Random(seed);
        this.entries = entries;
        this.sizes = random.ints(TRAITS, 2, 11).toArray();
        this.matrix = new LookMatrix(entries, sizes);
        this.prior = new double[entries];
        this.seen = new double[5][entries];
        this.doubles = new double[entries][TRAITS][];
        for (int e = 0; e < entries; e++) {
            fill(e, random);
        }
        this.memory = new float[entries * (Arrays.stream(sizes).sum() + TRAITS)];
    }

    private void fill(int e, Random random) {
        prior[e] = 1.0 / entries;
        for (double[] look : seen) {
            look[e] = Math.log(0.05 + 0.9 * random.nextDouble());
        }
        for (int t = 0; t < TRAITS; t++) {
            double[] chances = random.doubles(sizes[t], 0.01, 1).toArray();
            double sum = Arrays.stream(chances).sum();
            chances = Arrays.stream(chances).map(c -> c / sum).toArray();
            matrix.put(e, t, chances);
            doubles[e][t] = chances;
        }
    }

    private double[] posterior() {
        List<Piece> pieces = new ArrayList<>();
        for (double[] look : seen) {
            pieces.add(new Piece("", "", look));
        }
        return Scales.posterior(prior, pieces);
    }

    private double[] ours() {
        return matrix.gains(posterior());
    }

    /** Sums every float of a block as large as the matrix, four at a step: memory is the bound. */
    private float floor() {
        float a = 0;
        float b = 0;
        float c = 0;
        float d = 0;
        for (int i = 0; i + 3 < memory.length; i += 4) {
            a += memory[i];
            b += memory[i + 1];
            c += memory[i + 2];
            d += memory[i + 3];
        }
        return a + b + c + d;
    }

    /** What one would write first: maps of maps, entropy before less entropy after, answer by answer. */
    private double maps(List<Map<Integer, Map<Integer, Double>>> table) {
        double[] posterior = posterior();
        double before = Scales.entropy(posterior);
        double all = 0;
        for (int t = 0; t < TRAITS; t++) {
            double gain = before;
            for (int o = 0; o < sizes[t]; o++) {
                Map<Integer, Double> after = new HashMap<>();
                double sum = 0;
                for (int e = 0; e < entries; e++) {
                    double weight = posterior[e] * table.get(e).get(t).get(o);
                    after.put(e, weight);
                    sum += weight;
                }
                double bits = 0;
                for (double weight : after.values()) {
                    double p = weight / sum;
                    bits -= p > 0 ? p * Math.log(p) / Math.log(2) : 0;
                }
                gain -= sum * bits;
            }
            all += gain;
        }
        return all;
    }

    private List<Map<Integer, Map<Integer, Double>>> table() {
        List<Map<Integer, Map<Integer, Double>>> table = new ArrayList<>();
        for (double[][] own : doubles) {
            Map<Integer, Map<Integer, Double>> traits = new HashMap<>();
            for (int t = 0; t < TRAITS; t++) {
                Map<Integer, Double> answers = new HashMap<>();
                for (int o = 0; o < own[t].length; o++) {
                    answers.put(o, own[t][o]);
                }
                traits.put(t, answers);
            }
            table.add(traits);
        }
        return table;
    }

    /** Largest difference from the same sum in doubles, bits. */
    private double error() {
        double[] posterior = posterior();
        double[] gains = matrix.gains(posterior);
        double most = 0;
        for (int t = 0; t < TRAITS; t++) {
            double[] sums = new double[sizes[t]];
            double h = 0;
            for (int e = 0; e < entries; e++) {
                for (int o = 0; o < sums.length; o++) {
                    sums[o] += posterior[e] * doubles[e][t][o];
                }
                h += posterior[e] * Scales.entropy(doubles[e][t]);
            }
            most = Math.max(most, Math.abs(Scales.entropy(sums) - h - gains[t]));
        }
        return most;
    }

    private interface Work {
        double run();
    }

    private static double time(Work work, int times) {
        long start = System.nanoTime();
        double sink = 0;
        for (int i = 0; i < times; i++) {
            sink += work.run();
        }
        if (sink == 0.123) {
            System.out.println(sink);
        }
        return (System.nanoTime() - start) / 1e3 / times;
    }

    private void report() {
        Work ours = () -> ours()[0];
        Work floor = this::floor;
        int times = Math.max(3, 2_000_000 / entries / 10);
        List<Map<Integer, Map<Integer, Double>>> table = entries <= 10_000 ? table() : List.of();
        Work maps = () -> maps(table);
        int mapTimes = Math.max(1, 2_000 / entries);
        for (int i = 0; i < 4; i++) {
            time(ours, times);
            time(floor, times);
        }
        double[] overFloor = new double[ROUNDS];
        double[] underMaps = new double[ROUNDS];
        double[] micros = new double[ROUNDS];
        for (int r = 0; r < ROUNDS; r++) {
            micros[r] = time(ours, times);
            overFloor[r] = micros[r] / time(floor, times);
            underMaps[r] = table.isEmpty() ? Double.NaN : time(maps, mapTimes) / micros[r];
        }
        System.out.printf(
                "%7d entries: %9.1f us; over floor %s; plain maps %s times ours; off by %.1e bit%n",
                entries, median(micros), spread(overFloor), spread(underMaps), error());
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    private static String spread(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return String.format("%.2f/%.2f/%.2f", sorted[0], median(values), sorted[sorted.length - 1]);
    }

    public static void main(String[] args) {
        int[] sizes = args.length > 0
                ? Arrays.stream(args).mapToInt(Integer::parseInt).toArray()
                : new int[] {60, 1_000, 10_000, 100_000};
        System.out.println("min/median/max of " + ROUNDS + " rounds, " + TRAITS + " traits of 2 to 10 values");
        for (int entries : sizes) {
            new OneLookBench(entries, 7).report();
        }
    }
}
