package hornbook.shared.restock;

/** When to order: the stock that lasts until the goods come with the chance asked. */
final class ReorderPoint {
    /** No shop waits for more; a forecast beyond it is a slip of the ledger. */
    private static final int MOST = 100_000;

    private static final double FEWEST = 3;

    private ReorderPoint() {}

    /**
     * The least s such that, from the taking that brings the stock down to it until the goods are there, no more than s is
     * taken with the chance {@code asked}.
     */
    static int of(Forecast forecast, Wait wait, double asked) {
        double level = dared(asked, forecast.taken().doubt());
        int point = 0;
        int step = 1;
        while (chance(forecast, wait, point) < level && point < MOST) {
            point += step;
            step *= 2;
        }
        int low = point - step / 2;
        while (point - low > 1) {
            int middle = (low + point) / 2;
            if (chance(forecast, wait, middle) < level) {
                low = middle;
            } else {
                point = middle;
            }
        }
        return point;
    }

    /**
     * The level to reckon with, so that the one asked is reached although the takings are known from few: sizes that spread
     * exponentially, known from n, are exceeded as a Pareto distribution says (Aitchison and Dunsmore, Statistical
     * Prediction Analysis, 1975; from memory). The greatest widening is that of three.
     *
     * @param doubt one over n
     */
    static double dared(double asked, double doubt) {
        if (doubt <= 0) {
            return asked;
        }
        double n = Math.max(FEWEST, 1 / doubt);
        return 1 - Math.exp(-n * (Math.pow(1 - asked, -1 / n) - 1));
    }

    /** Chance that so many are enough, over all the spans the wait may take. */
    private static double chance(Forecast forecast, Wait wait, int pieces) {
        double sum = 0;
        for (int i = 0; i < wait.months().length; i++) {
            double span = wait.months()[i];
            double mean = forecast.perMonth() * span + forecast.taken().excess();
            double variance = forecast.variance() * span + forecast.taken().excessVariance();
            sum += wait.chances()[i] * new Counts(mean, variance).atMost(pieces);
        }
        return sum;
    }
}
