package hornbook.shared.restock;

import java.util.List;

/**
 * What articles of one kind are used, for those that were hardly used themselves: their rates are taken to spread as a
 * gamma distribution, whose mean and spread are those seen (method of moments), and an article's own months shift it.
 */
record KindUse(List<Use> uses) {

    /** Rate of the kind, drawn towards the article's own months as far as articles of the kind differ. */
    Forecast lend(Use own) {
        int times = uses.stream().mapToInt(Use::times).sum() - own.times();
        if (times < Forecast.ENOUGH) {
            return new Forecast(own.mean(), own.variance(), own.taken(), "hardly used, and so is its kind");
        }
        double months = uses.stream().mapToDouble(u -> u.months().length).sum();
        double mean = uses.stream().mapToDouble(Use::pieces).sum() / months;
        double lumps = Math.max(
                1,
                uses.stream().mapToDouble(Use::variance).sum()
                        / uses.stream().mapToDouble(Use::mean).sum());
        double apart = apart(mean, lumps, months);
        Takings taken = uses.stream().map(Use::taken).reduce(Takings.NONE, Takings::plus);
        double rate = apart <= 0 ? mean : (mean * mean / apart + own.pieces()) / (mean / apart + own.months().length);
        return new Forecast(rate, rate * lumps, taken, "borrowed from its kind");
    }

    /** Variance of the true rates: that of the rates seen less what chance alone would give. */
    private double apart(double mean, double lumps, double months) {
        double seen = uses.stream()
                        .mapToDouble(u -> u.months().length * (u.mean() - mean) * (u.mean() - mean))
                        .sum()
                / months;
        return seen - mean * lumps * uses.size() / months;
    }
}
