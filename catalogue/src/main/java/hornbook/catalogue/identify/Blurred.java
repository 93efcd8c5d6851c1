package hornbook.catalogue.identify;

/** Looks that tell which case it is, but for their misses. */
final class Blurred {
    private Blurred() {}

    static double[][] joint(double[] cells, double miss) {
        int n = cells.length;
        double[][] joint = new double[n][n];
        for (int o = 0; o < n; o++) {
            for (int c = 0; c < n; c++) {
                double given = n == 1 ? 1 : o == c ? 1 - miss : miss / (n - 1);
                joint[o][c] = cells[c] * given;
            }
        }
        return joint;
    }
}
