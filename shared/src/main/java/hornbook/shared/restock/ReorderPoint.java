package hornbook.shared.restock;

/** When to order: the stock that lasts until the goods come with the chance asked. */
final class ReorderPoint {
    /** No shop waits for more; a forecast beyond it is a slip of the ledger. */
    private static final int MOST = 100_000;

    private ReorderPoint() {}

    /**
     * The least s such that the demand over the wait is at most s with the chance of {@code level}.
     *
     * @param perMonth mean demand a month
     * @param variance of a month's demand
     */
    static int of(double perMonth, double variance, Wait wait, double level) {
        int point = 0;
        int step = 1;
        while (chance(perMonth, variance, wait, point) < level && point < MOST) {
            point += step;
            step *= 2;
        }
        int low = point - step / 2;
        while (point - low > 1) {
            int middle = (low + point) / 2;
            if (chance(perMonth, variance, wait, middle) < level) {
                low = middle;
            } else {
                point = middle;
            }
        }
        return point;
    }

    /** Chance that so many are enough, over all the spans the wait may take. */
    private static double chance(double perMonth, double variance, Wait wait, int pieces) {
        double sum = 0;
        for (double span : wait.months()) {
            sum += new Counts(perMonth * span, variance * span).atMost(pieces);
        }
        return sum / wait.months().length;
    }
}
