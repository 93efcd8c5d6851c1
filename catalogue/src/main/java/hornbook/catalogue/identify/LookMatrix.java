package hornbook.catalogue.identify;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Chances of every answer for every entry, folded once into rows of floats, so that what each look would tell is one
 * product of a vector and this matrix: gain = H(Σ p φ) − Σ p h, with φ the chances and h their entropy in bits.
 */
final class LookMatrix {
    /** Entries summed in floats before the sum goes into doubles. */
    private static final int BLOCK = 512;

    private static final double LOG_2 = Math.log(2);

    private final int width;
    private final int[] starts;
    private final float[] rows;

    /** @param sizes number of answers of each question */
    LookMatrix(int entries, int[] sizes) {
        this.starts = new int[sizes.length + 1];
        for (int q = 0; q < sizes.length; q++) {
            starts[q + 1] = starts[q] + sizes[q];
        }
        this.width = starts[sizes.length] + sizes.length;
        this.rows = new float[Math.multiplyExact(entries, width)];
    }

    /** Folds evidence; a question is one that a look asks, in the order of the evidence. */
    static LookMatrix of(List<Evidence> evidence, int entries) {
        List<Integer> sizes = new ArrayList<>();
        evidence.forEach(e -> Arrays.stream(e.outcomes()).forEach(sizes::add));
        LookMatrix matrix =
                new LookMatrix(entries, sizes.stream().mapToInt(i -> i).toArray());
        double[] chances = new double[sizes.stream().mapToInt(i -> i).max().orElse(0)];
        for (int entry = 0; entry < entries; entry++) {
            int question = 0;
            for (Evidence one : evidence) {
                for (int own = 0; own < one.outcomes().length; own++) {
                    one.chances(entry, own, chances);
                    matrix.put(entry, question++, chances);
                }
            }
        }
        return matrix;
    }

    /** Puts one entry's chances of the answers to one question, and their entropy. */
    void put(int entry, int question, double[] chances) {
        int at = entry * width;
        int size = starts[question + 1] - starts[question];
        double bits = 0;
        for (int o = 0; o < size; o++) {
            rows[at + starts[question] + o] = (float) chances[o];
            bits -= chances[o] > 0 ? chances[o] * Math.log(chances[o]) : 0;
        }
        rows[at + starts[starts.length - 1] + question] = (float) (bits / LOG_2);
    }

    int questions() {
        return starts.length - 1;
    }

    /** Bits that each question is expected to tell, entries weighing as given; weights add up to 1. */
    double[] gains(double[] weights) {
        return gainsOf(product(weights));
    }

    /** The same from a product already made. */
    double[] gainsOf(double[] sums) {
        double[] gains = new double[questions()];
        for (int q = 0; q < gains.length; q++) {
            double bits = 0;
            for (int c = starts[q]; c < starts[q + 1]; c++) {
                bits -= sums[c] > 0 ? sums[c] * Math.log(sums[c]) : 0;
            }
            gains[q] = Math.max(0, bits / LOG_2 - sums[starts[starts.length - 1] + q]);
        }
        return gains;
    }

    /** Weighted chance of each answer to a question, by entries' weights. */
    double[] answers(double[] sums, int question) {
        return Arrays.copyOfRange(sums, starts[question], starts[question + 1]);
    }

    /** Sum over entries of weight times row. */
    double[] product(double[] weights) {
        double[] sums = new double[width];
        float[] block = new float[width];
        for (int from = 0; from < weights.length; from += BLOCK) {
            Arrays.fill(block, 0);
            add(block, weights, from, Math.min(from + BLOCK, weights.length));
            for (int c = 0; c < width; c++) {
                sums[c] += block[c];
            }
        }
        return sums;
    }

    private void add(float[] block, double[] weights, int from, int to) {
        int e = from;
        for (; e + 4 <= to; e += 4) {
            four(
                    block,
                    rows,
                    e * width,
                    width,
                    (float) weights[e],
                    (float) weights[e + 1],
                    (float) weights[e + 2],
                    (float) weights[e + 3]);
        }
        for (; e < to; e++) {
            four(block, rows, e * width, 0, (float) weights[e], 0, 0, 0);
        }
    }

    /** Four rows at a step, straight through, which the compiler turns into vector instructions. */
    private static void four(float[] into, float[] rows, int at, int step, float a, float b, float c, float d) {
        for (int i = 0; i < into.length; i++) {
            into[i] += a * rows[at + i]
                    + b * rows[at + step + i]
                    + c * rows[at + 2 * step + i]
                    + d * rows[at + 3 * step + i];
        }
    }
}
