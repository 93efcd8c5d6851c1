package hornbook.shared.restock;

/**
 * A month's demand.
 *
 * @param how in a few words, for the list
 */
record Forecast(double perMonth, double variance, Takings taken, String how) {
    private static final double ALPHA = 0.1;

    /** Fewer uses than this tell too little by themselves. */
    static final int ENOUGH = 3;

    static Forecast of(Use use) {
        if (use.fading()) {
            return new Forecast(
                    Intermittent.tsb(use.months(), ALPHA), use.variance(), use.taken(), "less and less used");
        }
        return new Forecast(Intermittent.of(use.months(), ALPHA).sba(), use.variance(), use.taken(), "");
    }

    /** By an article's own uses, or where these are few by those of its kind. */
    static Forecast of(Use use, KindUse kind) {
        return use.times() >= ENOUGH ? of(use) : kind.lend(use);
    }
}
