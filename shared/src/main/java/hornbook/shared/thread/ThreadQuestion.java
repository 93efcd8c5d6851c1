package hornbook.shared.thread;

import hornbook.shared.measure.Length;
import hornbook.shared.measure.Measured;
import java.util.Optional;

/**
 * What was measured of a thread nobody has named yet.
 *
 * @param diameter over the crests of a screw, or through those of a hole; without a stated doubt, ± 0.02 mm
 * @param pitch empty where it could not be read
 * @param form included angle in degrees, empty where it was not looked at
 * @param percent of full thread the tap drills aim at
 * @param wall metal round the hole as it is now; empty where it was not measured
 * @param through diameter of the rod or tube the screw has to pass; empty where it passes none
 */
public record ThreadQuestion(
        Side side,
        Measured diameter,
        Optional<PitchReading> pitch,
        Optional<Double> form,
        double percent,
        Optional<Length> wall,
        Optional<Length> through) {

    /** Usual aim of a tap drill, in percent of full thread (Machinery's Handbook). */
    public static final double USUAL_PERCENT = 75;

    /** A question with nothing but diameter and pitch. */
    public static ThreadQuestion of(Side side, Measured diameter, PitchReading pitch) {
        return new ThreadQuestion(
                side,
                diameter,
                Optional.of(pitch),
                Optional.empty(),
                USUAL_PERCENT,
                Optional.empty(),
                Optional.empty());
    }
}
