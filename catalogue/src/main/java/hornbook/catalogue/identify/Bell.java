package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Normal;

/** The normal distribution's lower tail. */
final class Bell {
    private Bell() {}

    /** Chance of a value below x; error below 8e-8 (Abramowitz and Stegun 1964, 26.2.17). */
    static double below(double x, Normal of) {
        double z = (x - of.mean()) / of.sd();
        double t = 1 / (1 + 0.2316419 * Math.abs(z));
        double poly = t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        double tail = Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI) * poly;
        return z < 0 ? tail : 1 - tail;
    }
}
