package hornbook.shared.restock;

/**
 * How much is taken at a time: sums of the pieces of each taking, of their squares and cubes.
 *
 * <p>Stock does not stop at the point: the taking that reaches it goes below it by what renewal theory calls the excess,
 * with chance P(taking &gt; u) / mean for u pieces. Where one or two are taken now and then that is nothing; where five are
 * taken at once it is most of what has to be kept.
 */
record Takings(int times, double pieces, double squares, double cubes) {
    static final Takings NONE = new Takings(0, 0, 0, 0);

    Takings and(int taken) {
        double n = Math.max(0, taken);
        return new Takings(times + 1, pieces + n, squares + n * n, cubes + n * n * n);
    }

    Takings plus(Takings other) {
        return new Takings(times + other.times, pieces + other.pieces, squares + other.squares, cubes + other.cubes);
    }

    /** Mean pieces below the point when an order is due. */
    double excess() {
        return pieces <= 0 ? 0 : Math.max(0, (squares / pieces - 1) / 2);
    }

    /** Variance of that. */
    double excessVariance() {
        double ofSquare = pieces <= 0 ? 0 : (2 * cubes - 3 * squares + pieces) / 6 / pieces;
        return Math.max(0, ofSquare - excess() * excess());
    }

    /**
     * How well the excess is known: the variance of what was reckoned, as a share of its square. By the first terms of a
     * series it is twice the squared coefficient of variation over the number of takings, where they are as uneven as
     * geometric ones; like takings leave no doubt.
     */
    double doubt() {
        if (times < 2 || pieces <= 0) {
            return 0;
        }
        double mean = pieces / times;
        double variance = Math.max(0, (squares - pieces * mean) / (times - 1));
        return 2 * variance / (mean * mean) / times;
    }
}
