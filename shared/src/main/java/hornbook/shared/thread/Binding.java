package hornbook.shared.thread;

import hornbook.shared.measure.Length;
import hornbook.shared.measure.Limits;
import hornbook.shared.thread.ThreadAnswer.LookAlike;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Screws that start in a hole of another thread. The first turn always goes in; each further one adds the difference of
 * the pitches, until that has eaten the play between the flanks: clearance on the effective diameter times tan(half
 * angle), taken at the loose end of both limits, as old brass is.
 */
final class Binding {
    /** Length of thread in a post, mm. */
    private static final double ENGAGED = 5;
    /** How far a hole's root lies over its nominal diameter. */
    private static final Length ROOT = Length.ofMillimetres("0.02");
    /** Least share of the hole's thread a screw must catch, or it drops through. */
    private static final double CATCHES = 0.35;

    private Binding() {}

    /** Both ways round: others' screws in this hole, this screw in others' holes; the most alike first. */
    static List<LookAlike> of(Candidate likely, List<Candidate> all, int most) {
        return all.stream()
                .filter(other -> !other.thread().equals(likely.thread()))
                .sorted(Comparator.comparingDouble(other -> unlike(other, likely)))
                .flatMap(other -> Stream.of(pair(other, likely), pair(likely, other)))
                .flatMap(Optional::stream)
                .limit(most)
                .toList();
    }

    /** How easily the eye parts them: a pitch out by 0.05 mm counts as a diameter out by 0.1 mm. */
    private static double unlike(Candidate one, Candidate other) {
        return Math.abs(one.thread().major().minus(other.thread().major()).mm())
                + 2
                        * Math.abs(one.thread().pitch().mm()
                                - other.thread().pitch().mm());
    }

    /** Empty if the screw does not start, or drops through. */
    static Optional<LookAlike> pair(Candidate screw, Candidate hole) {
        double play = screw.limits().screwPitch().least().mm();
        double clearance = hole.limits().holePitch().most().mm() - play;
        Limits crest = screw.limits().screwMajor();
        boolean enters = crest.least().compareTo(hole.thread().major().plus(ROOT)) <= 0 && clearance > 0;
        double caught = hole.thread().percentInHole(hole.limits().holeMinor().middle())
                - hole.thread().percentInHole(crest.middle());
        double drift =
                Math.abs(screw.thread().pitch().mm() - hole.thread().pitch().mm());
        if (!enters || caught < 100 * CATCHES) {
            return Optional.empty();
        }
        double angle =
                Math.max(screw.thread().system().angle(), hole.thread().system().angle());
        double turns = drift == 0 ? Double.POSITIVE_INFINITY : 1 + clearance * tanHalf(angle) / drift;
        boolean home = turns * screw.thread().pitch().mm() > ENGAGED;
        return Optional.of(new LookAlike(
                screw.thread().designation(),
                hole.thread().designation(),
                home ? Optional.empty() : Optional.of(Math.rint(turns * 2) / 2),
                note(screw, hole, home)));
    }

    private static String note(Candidate screw, Candidate hole, boolean home) {
        if (!home) {
            return "starts, then binds: do not force it";
        }
        return screw.twinOf(hole)
                ? "runs home: same diameter and pitch, another angle"
                : "runs home and feels only loose or tight: trying does not tell";
    }

    private static double tanHalf(double degrees) {
        return Math.tan(Math.toRadians(degrees / 2));
    }
}
