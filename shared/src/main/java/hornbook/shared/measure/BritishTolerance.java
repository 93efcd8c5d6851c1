package hornbook.shared.measure;

/** BS 93 normal class for BA; BS 84 medium class for Whitworth forms. */
final class BritishTolerance {
    private static final Provenance BS_93 =
            new Provenance("BS 93, normal class, tolerances in pitches", "computed; formulas read at two copies");
    private static final Provenance BS_84 = new Provenance(
            "BS 84, medium class: T = 0.002 D^(1/3) + 0.003 L^(1/2) + 0.005 p^(1/2) inch", "from memory");
    private static final Length TEN_BA = Length.ofMillimetres("1.7");

    private BritishTolerance() {}

    static ThreadLimits association(Thread thread) {
        double p = thread.pitch().mm();
        double major = thread.major().mm();
        double effective = thread.pitchDiameter().mm();
        double minor = thread.minorInternal().mm();
        double onMajor = (thread.major().compareTo(TEN_BA) >= 0 ? 0.20 : 0.25) * p;
        return new ThreadLimits(
                thread.designation(),
                "BS 93 normal",
                Limits.ofMillimetres(major - onMajor, major),
                Limits.ofMillimetres(effective - (0.10 * p + 0.025), effective),
                Limits.ofMillimetres(minor, minor + 0.375 * p),
                Limits.ofMillimetres(effective, effective + 0.12 * p + 0.03),
                BS_93);
    }

    static ThreadLimits whitworth(Thread thread) {
        double d = thread.major().in(LengthUnit.INCH);
        double p = 1 / thread.pitch().perInch();
        double medium = 25.4 * (0.002 * Math.cbrt(d) + 0.003 * Math.sqrt(d) + 0.005 * Math.sqrt(p));
        double major = thread.major().mm();
        double effective = thread.pitchDiameter().mm();
        double minor = thread.minorInternal().mm();
        return new ThreadLimits(
                thread.designation(),
                "BS 84 medium",
                Limits.ofMillimetres(major - medium - 25.4 * 0.01 * Math.sqrt(p), major),
                Limits.ofMillimetres(effective - medium, effective),
                Limits.ofMillimetres(minor, minor + 25.4 * onMinor(p)),
                Limits.ofMillimetres(effective, effective + medium),
                BS_84);
    }

    private static double onMinor(double p) {
        double perInch = 1 / p;
        double constant = perInch > 25 ? 0.004 : perInch > 21 ? 0.005 : 0.007;
        return 0.2 * p + constant;
    }
}
