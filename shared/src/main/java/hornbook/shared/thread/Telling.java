package hornbook.shared.thread;

import hornbook.shared.thread.ThreadAnswer.Apart;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What to look at to tell likely threads apart, or that calliper and pitch gauge cannot. */
final class Telling {
    /** From here on a difference is worth looking for, in standard deviations of the difference. */
    private static final double TELLS = 2;

    private Telling() {}

    /** Each pair of the likely threads, in their order. */
    static List<Apart> between(List<Candidate> likely, Side side) {
        List<Apart> pairs = new ArrayList<>();
        for (int one = 0; one < likely.size(); one++) {
            for (int other = one + 1; other < likely.size(); other++) {
                pairs.add(pair(likely.get(one), likely.get(other), side));
            }
        }
        return List.copyOf(pairs);
    }

    static Apart pair(Candidate one, Candidate other, Side side) {
        String first = one.thread().designation();
        String second = other.thread().designation();
        if (one.twinOf(other)) {
            return new Apart(first, second, false, neither(one, other));
        }
        if (alongTells(one, other)) {
            return new Apart(first, second, true, along(one, other));
        }
        if (acrossTells(one, other, side)) {
            return new Apart(first, second, true, across(one, other, side));
        }
        return new Apart(first, second, false, neither(one, other));
    }

    private static boolean alongTells(Candidate one, Candidate other) {
        double apart =
                Math.abs(one.thread().pitch().mm() - other.thread().pitch().mm());
        return apart / (PitchGauge.LEAF_SIGMA * Math.sqrt(2)) >= TELLS;
    }

    /** On unworn threads: wear on one of the two would blur what their limits leave. */
    private static boolean acrossTells(Candidate one, Candidate other, Side side) {
        Crest first = Crest.of(one.limits(), side, Likelihood.GAUGE_SIGMA);
        Crest second = Crest.of(other.limits(), side, Likelihood.GAUGE_SIGMA);
        double spread = Math.hypot(Math.min(first.below(), first.above()), Math.min(second.below(), second.above()));
        return Math.abs(first.middle() - second.middle()) / spread >= TELLS;
    }

    private static String along(Candidate one, Candidate other) {
        return String.format(
                Locale.ROOT,
                "pitch gauge, or ten turns by calliper: %.2f mm is %s, %.2f mm is %s",
                10 * one.thread().pitch().mm(),
                one.thread().designation(),
                10 * other.thread().pitch().mm(),
                other.thread().designation());
    }

    private static String across(Candidate one, Candidate other, Side side) {
        return String.format(
                Locale.ROOT,
                "%s where it is not worn: about %.2f mm is %s, about %.2f mm is %s",
                side == Side.SCREW ? "over the crests" : "through the crests",
                Crest.of(one.limits(), side, 0).middle(),
                one.thread().designation(),
                Crest.of(other.limits(), side, 0).middle(),
                other.thread().designation());
    }

    private static String neither(Candidate one, Candidate other) {
        double first = one.thread().system().angle();
        double second = other.thread().system().angle();
        if (Math.abs(first - second) < 1) {
            return "calliper and pitch gauge cannot: try a screw known to be the one, and go by the horn's other threads";
        }
        return String.format(
                Locale.ROOT,
                "calliper and pitch gauge cannot: only the angle, %.1f against %.1f degrees, by a form leaf under a glass;"
                        + " the horn's age and its other threads help",
                first,
                second);
    }
}
