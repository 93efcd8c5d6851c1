package hornbook.shared.restock;

/**
 * How many are wanted in a span of time: negative binomial with a given mean and variance, Poisson where the variance is
 * no larger than the mean.
 */
record Counts(double mean, double variance) {

    /** Chance of at most so many. */
    double atMost(int pieces) {
        if (mean <= 0) {
            return 1;
        }
        boolean poisson = variance <= mean * (1 + 1e-9);
        double size = poisson ? 0 : mean * mean / (variance - mean);
        double rest = poisson ? 0 : mean / (size + mean);
        // In logarithms, as the first term of a large mean is smaller than a double can hold.
        double log = poisson ? -mean : size * Math.log1p(-rest);
        double sum = 0;
        for (int k = 0; k <= pieces; k++) {
            sum += Math.exp(log);
            log += poisson ? Math.log(mean / (k + 1)) : Math.log((k + size) / (k + 1) * rest);
        }
        return Math.min(1, sum);
    }
}
