package hornbook.shared.measure;

/** Classes 6g and 6H by the formulas of ISO 965-1, rounded to the R40 preferred numbers. */
final class MetricTolerance {
    private static final double[] R40 = {
        1.0, 1.06, 1.12, 1.18, 1.25, 1.32, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9, 2.0, 2.12, 2.24, 2.36, 2.5, 2.65, 2.8, 3.0,
        3.15, 3.35, 3.55, 3.75, 4.0, 4.25, 4.5, 4.75, 5.0, 5.3, 5.6, 6.0, 6.3, 6.7, 7.1, 7.5, 8.0, 8.5, 9.0, 9.5, 10.0
    };
    private static final double[] DIAMETER_RANGES = {0.99, 1.4, 2.8, 5.6, 11.2};
    private static final Provenance FORMULA = new Provenance(
            "ISO 965-1, formulas, rounded to R40; no printed row here", "computed; the formulas are from memory");
    private static final Provenance OLD_GERMAN = new Provenance(
            "no tolerance of the old standard is known to us; taken as ISO 965-1 grade 6 without allowance",
            "from memory; weak");

    private MetricTolerance() {}

    static ThreadLimits limits(Thread thread) {
        return limits(thread, "6g/6H", Math.rint(15 + 11 * thread.pitch().mm()) / 1000, FORMULA);
    }

    static ThreadLimits loewenherz(Thread thread) {
        return limits(thread, "as grade 6, no allowance", 0, OLD_GERMAN);
    }

    private static ThreadLimits limits(Thread thread, String fit, double allowance, Provenance provenance) {
        double p = thread.pitch().mm();
        double major = thread.major().mm() - allowance;
        double pitchDiameter = thread.pitchDiameter().mm();
        double minor = thread.minorInternal().mm();
        double onPitch =
                90 * Math.pow(p, 0.4) * Math.pow(middleOfRange(thread.major().mm()), 0.1);
        return new ThreadLimits(
                thread.designation(),
                fit,
                Limits.ofMillimetres(major - r40(180 * Math.pow(p, 2 / 3.0) - 3.15 / Math.sqrt(p)), major),
                Limits.ofMillimetres(pitchDiameter - allowance - r40(onPitch), pitchDiameter - allowance),
                Limits.ofMillimetres(minor, minor + r40(minorTolerance(p))),
                Limits.ofMillimetres(pitchDiameter, pitchDiameter + r40(1.32 * onPitch)),
                provenance);
    }

    private static double minorTolerance(double p) {
        return p <= 0.8 ? 433 * p - 190 * Math.pow(p, 1.22) : 230 * Math.pow(p, 0.7);
    }

    private static double middleOfRange(double diameter) {
        int range = 1;
        while (range < DIAMETER_RANGES.length - 1 && diameter > DIAMETER_RANGES[range]) {
            range++;
        }
        return Math.sqrt(DIAMETER_RANGES[range - 1] * DIAMETER_RANGES[range]);
    }

    /** Micrometres to the nearest preferred number, whole from 20 up; the result in millimetres. */
    private static double r40(double micrometres) {
        double decade = Math.pow(10, Math.floor(Math.log10(micrometres)));
        double best = R40[0];
        for (double step : R40) {
            // Halfway goes up, as 230 to 236 for the hole of M6.
            if (Math.abs(step * decade - micrometres) <= Math.abs(best * decade - micrometres) + 1e-9) {
                best = step;
            }
        }
        return Math.rint(best * decade) / 1000;
    }
}
