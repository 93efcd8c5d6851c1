package hornbook.shared.restock;

/**
 * Forecasts of demand that comes now and then, from whole periods, oldest first: Croston 1972 and its corrections.
 *
 * <p>Start: the first size that is not nought, and the number of periods up to and including it; updated only in periods
 * with demand.
 *
 * @param size smoothed size of a demand
 * @param gap smoothed number of periods from one demand to the next
 * @param alpha the weight of the newest
 */
record Intermittent(double size, double gap, double alpha) {

    /** @return with size 0 where the series has no demand */
    static Intermittent of(int[] series, double alpha) {
        double size = 0;
        double gap = 0;
        int since = 0;
        for (int demand : series) {
            since++;
            if (demand == 0) {
                continue;
            }
            size = size == 0 ? demand : size + alpha * (demand - size);
            gap = gap == 0 ? since : gap + alpha * (since - gap);
            since = 0;
        }
        return new Intermittent(size, gap, alpha);
    }

    /** A period's demand by Croston 1972: known to come out too high. */
    double croston() {
        return size == 0 ? 0 : size / gap;
    }

    /** A period's demand by Syntetos and Boylan 2005, which takes that out. */
    double sba() {
        return (1 - alpha / 2) * croston();
    }

    /**
     * A period's demand by Teunter, Syntetos and Babai 2011: the chance of a demand falls with every period without one,
     * so that what has gone out of use fades.
     */
    static double tsb(int[] series, double alpha) {
        double size = 0;
        double chance = 0;
        for (int i = 0; i < series.length; i++) {
            if (size == 0) {
                size = series[i];
                chance = series[i] == 0 ? 0 : 1.0 / (i + 1);
            } else {
                chance += alpha * ((series[i] == 0 ? 0 : 1) - chance);
                size += series[i] == 0 ? 0 : alpha * (series[i] - size);
            }
        }
        return size * chance;
    }
}
