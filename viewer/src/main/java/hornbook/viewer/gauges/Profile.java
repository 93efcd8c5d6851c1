package hornbook.viewer.gauges;

import java.util.ArrayList;
import java.util.List;

/**
 * The outline of a thread cut along its axis, in mm. Depths of the screw's thread over the pitch: 60 degrees 0.6134
 * (ISO 68-1, ASME B1.1), 55 degrees 0.6403 (BS 84), 47.5 degrees 0.6 (BS 93), 53 degrees 8 minutes 0.75 (Loewenherz);
 * crests and roots are drawn flat and alike.
 *
 * @param pitch crest to crest
 * @param major over the crests of the screw
 * @param angle between the flanks, degrees
 */
record Profile(double pitch, double major, double angle) {
    /** A corner: along the axis, and out from it. */
    record Corner(double along, double out) {}

    /** From crest to root. */
    double depth() {
        double share = angle > 58 ? 0.6134 : angle > 54 ? 0.6403 : angle > 50 ? 0.75 : 0.6;
        return share * pitch;
    }

    private double flat() {
        return Math.max(0, pitch / 2 - depth() * Math.tan(Math.toRadians(angle / 2)));
    }

    /** From a first crest at nought through so many turns. */
    List<Corner> corners(int turns) {
        List<Corner> corners = new ArrayList<>();
        double crest = major / 2;
        double root = crest - depth();
        double half = flat() / 2;
        for (int turn = 0; turn <= turns; turn++) {
            double at = turn * pitch;
            corners.add(new Corner(at - half, crest));
            corners.add(new Corner(at + half, crest));
            if (turn < turns) {
                corners.add(new Corner(at + pitch / 2 - half, root));
                corners.add(new Corner(at + pitch / 2 + half, root));
            }
        }
        return List.copyOf(corners);
    }
}
