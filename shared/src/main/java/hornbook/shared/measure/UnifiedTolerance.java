package hornbook.shared.measure;

/** Classes 2A and 2B by the formulas of ASME B1.1, section 8, reckoned in inches. */
final class UnifiedTolerance {
    private static final Provenance FORMULA =
            new Provenance("ASME B1.1 section 8 formulas; engagement 9 pitches outside UNC and UNF", "computed");

    private UnifiedTolerance() {}

    static ThreadLimits limits(Thread thread) {
        double d = thread.major().in(LengthUnit.INCH);
        double p = 1 / thread.pitch().perInch();
        double engagement = thread.series().equals("UNC") || thread.series().equals("UNF") ? d : 9 * p;
        double onPitch = 0.0015 * Math.cbrt(d) + 0.0015 * Math.sqrt(engagement) + 0.015 * Math.pow(p, 2 / 3.0);
        double allowance = places4(0.3 * onPitch);
        double onMajor = places4(0.060 * Math.pow(p, 2 / 3.0));
        double pitchDiameter = d - 0.64951905 * p;
        double minor = d - 1.08253175 * p;
        return new ThreadLimits(
                thread.designation(),
                "2A/2B",
                inches(d - allowance - onMajor, d - allowance),
                inches(pitchDiameter - allowance - onPitch, pitchDiameter - allowance),
                inches(minor, minor + onMinor(d, p)),
                inches(pitchDiameter, pitchDiameter + 1.3 * onPitch),
                FORMULA);
    }

    private static double onMinor(double d, double p) {
        double coarse = 0.25 * p - 0.4 * p * p;
        double small = 0.05 * Math.pow(p, 2 / 3.0) + 0.03 * p / d - 0.002;
        return d >= 0.25 ? coarse : Math.clamp(small, coarse, 0.394 * p);
    }

    /** The standard rounds allowance and major tolerance to the ten-thousandth. */
    private static double places4(double inches) {
        return Math.rint(inches * 10_000) / 10_000;
    }

    private static Limits inches(double least, double most) {
        return Limits.ofMillimetres(least * 25.4, most * 25.4);
    }
}
