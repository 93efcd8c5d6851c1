package hornbook.shared.thread;

import hornbook.shared.measure.Limits;
import hornbook.shared.measure.ThreadLimits;

/**
 * What a gauge reads over the crests of a good thread: not the nominal size but the middle of its limits, spread by
 * tolerance/√12 and the gauge, and by wear on the side wear goes to (a screw wears smaller, a hole larger).
 *
 * @param middle mm
 * @param below standard deviation below the middle, mm
 * @param above standard deviation above it, mm
 */
record Crest(double middle, double below, double above) {
    /** One-sided wear, mm. */
    static final double WEAR = 0.03;

    static Crest of(ThreadLimits limits, Side side, double gauge) {
        Limits crest = side == Side.SCREW ? limits.screwMajor() : limits.holeMinor();
        double fresh = Math.hypot(crest.width().mm() / Math.sqrt(12), gauge);
        double worn = Math.hypot(fresh, WEAR);
        return side == Side.SCREW
                ? new Crest(crest.middle().mm(), worn, fresh)
                : new Crest(crest.middle().mm(), fresh, worn);
    }

    /** How many standard deviations a reading lies from the middle; negative below it. */
    double deviations(double reading) {
        return (reading - middle) / (reading < middle ? below : above);
    }

    /** Density per mm. */
    double density(double reading) {
        double z = deviations(reading);
        return 2 / (below + above) * Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
    }
}
