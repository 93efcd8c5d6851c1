package hornbook.catalogue.identify;

import java.util.Arrays;

/**
 * A curve through anchors with x ascending; outside them it stays level. Straight lines, or where the anchors are
 * smooth a monotone cubic with Fritsch and Butland's slopes (SIAM J. Sci. Stat. Comput. 5 (1984) 300, as PCHIM in
 * SLATEC).
 */
final class Interpolation {
    private static final int FEWEST = 4;
    private static final double SMOOTH = 2;

    private final double[] x;
    private final double[] y;
    private final double[] slopes;

    private Interpolation(double[] x, double[] y, double[] slopes) {
        this.x = x;
        this.y = y;
        this.slopes = slopes;
    }

    /** Straight from anchor to anchor. */
    static Interpolation linear(double[] x, double[] y) {
        return new Interpolation(x, y, new double[0]);
    }

    /** Monotone cubic. */
    static Interpolation monotone(double[] x, double[] y) {
        return new Interpolation(x, y, slopes(x, y));
    }

    /** The cubic where no stretch is more than twice as steep as the next, and there are enough; else straight. */
    static Interpolation fitting(double[] x, double[] y) {
        return smooth(x, y) ? monotone(x, y) : linear(x, y);
    }

    private static boolean smooth(double[] x, double[] y) {
        double before = 0;
        for (int i = 0; i + 1 < x.length; i++) {
            double rise = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
            if (rise <= 0 || i > 0 && (rise > SMOOTH * before || before > SMOOTH * rise)) {
                return false;
            }
            before = rise;
        }
        return x.length >= FEWEST;
    }

    double at(double value) {
        if (value <= x[0]) {
            return y[0];
        }
        if (value >= x[x.length - 1]) {
            return y[y.length - 1];
        }
        int found = Arrays.binarySearch(x, value);
        int i = found >= 0 ? found : -found - 2;
        return slopes.length == 0 ? straight(i, value) : cubic(i, value);
    }

    /** Width of the stretch between anchors around a value, in y. */
    double gap(double value) {
        int i = 0;
        while (i + 2 < x.length && value >= x[i + 1]) {
            i++;
        }
        return x.length < 2 ? 0 : y[i + 1] - y[i];
    }

    private double straight(int i, double value) {
        return y[i] + (y[i + 1] - y[i]) * (value - x[i]) / (x[i + 1] - x[i]);
    }

    private double cubic(int i, double value) {
        double h = x[i + 1] - x[i];
        double t = (value - x[i]) / h;
        double u = 1 - t;
        return u * u * (1 + 2 * t) * y[i]
                + t * u * u * h * slopes[i]
                + t * t * (3 - 2 * t) * y[i + 1]
                - t * t * u * h * slopes[i + 1];
    }

    double[] slopes() {
        return slopes.clone();
    }

    private static double[] slopes(double[] x, double[] y) {
        int n = x.length;
        double[] h = new double[n - 1];
        double[] rise = new double[n - 1];
        for (int i = 0; i < n - 1; i++) {
            h[i] = x[i + 1] - x[i];
            rise[i] = (y[i + 1] - y[i]) / h[i];
        }
        double[] slopes = new double[n];
        if (n == 2) {
            Arrays.fill(slopes, rise[0]);
            return slopes;
        }
        for (int i = 1; i < n - 1; i++) {
            double a = 2 * h[i] + h[i - 1];
            double b = h[i] + 2 * h[i - 1];
            slopes[i] = rise[i - 1] * rise[i] > 0 ? (a + b) / (a / rise[i - 1] + b / rise[i]) : 0;
        }
        slopes[0] = end(h[0], h[1], rise[0], rise[1]);
        slopes[n - 1] = end(h[n - 2], h[n - 3], rise[n - 2], rise[n - 3]);
        return slopes;
    }

    /** One-sided three-point slope that keeps the shape. */
    private static double end(double h, double next, double rise, double riseNext) {
        double slope = ((2 * h + next) * rise - h * riseNext) / (h + next);
        if (slope * rise <= 0) {
            return 0;
        }
        return rise * riseNext < 0 && Math.abs(slope) > 3 * Math.abs(rise) ? 3 * rise : slope;
    }
}
