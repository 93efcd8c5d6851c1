package hornbook.shared.thread;

import hornbook.shared.thread.SimulatedReadings.Pair;
import hornbook.shared.thread.SimulatedReadings.Read;
import java.io.IOException;
import java.util.Locale;

/** How honest thread probabilities are over all pairs of thread_pairs.csv. Arguments: readings a pair, seed. */
public final class ThreadReadingsBench {
    private static final int BINS = 10;

    private final double[] said = new double[BINS];
    private final int[] right = new int[BINS];
    private final int[] all = new int[BINS];
    private int sureWrong;
    private int worst;
    private String worstPair = "";
    private int hard;

    private ThreadReadingsBench() {}

    public static void main(String[] args) throws IOException {
        int readings = args.length > 0 ? Integer.parseInt(args[0]) : 2000;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 7;
        ThreadReadingsBench bench = new ThreadReadingsBench();
        SimulatedReadings simulated = new SimulatedReadings(seed);
        for (Pair pair : SimulatedReadings.pairs()) {
            bench.pair(pair, simulated, readings);
        }
        bench.print(readings);
    }

    private void pair(Pair pair, SimulatedReadings simulated, int readings) {
        int wrong = 0;
        for (int round = 0; round < readings; round++) {
            boolean first = round % 2 == 0;
            Read read =
                    simulated.read(first ? pair.one() : pair.other(), first ? pair.other() : pair.one(), round % 4 < 2);
            if (!read.neither()) {
                count(read.share(), true);
                count(1 - read.share(), false);
            }
            wrong += read.rival() > 0.9 ? 1 : 0;
        }
        if (!pair.told()) {
            hard += readings;
            sureWrong += wrong;
            if (wrong > worst) {
                worst = wrong;
                worstPair = pair.one().thread().designation() + " / "
                        + pair.other().thread().designation();
            }
        }
    }

    private void count(double share, boolean is) {
        int bin = Math.min(BINS - 1, (int) (share * BINS));
        said[bin] += share;
        all[bin]++;
        right[bin] += is ? 1 : 0;
    }

    private void print(int readings) {
        double off = 0;
        int sum = 0;
        for (int bin = 0; bin < BINS; bin++) {
            if (all[bin] > 0) {
                System.out.printf(
                        Locale.ROOT,
                        "  said %.3f, true %.3f of %d%n",
                        said[bin] / all[bin],
                        right[bin] / (double) all[bin],
                        all[bin]);
                off += Math.abs(said[bin] - right[bin]);
                sum += all[bin];
            }
        }
        System.out.printf(Locale.ROOT, "expected calibration error %.4f%n", off / sum);
        System.out.printf(
                Locale.ROOT,
                "pairs that the gauge cannot tell: %d readings, %d surely wrong (over 0.9); most of one pair %d of %d (%s)%n",
                hard,
                sureWrong,
                worst,
                readings,
                worstPair);
    }
}
