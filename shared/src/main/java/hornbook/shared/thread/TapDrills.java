package hornbook.shared.thread;

import hornbook.shared.measure.Drill;
import hornbook.shared.measure.DrillTable;
import hornbook.shared.measure.Thread;
import hornbook.shared.thread.ThreadAnswer.TapDrill;
import java.util.Comparator;
import java.util.List;

/** Drills for a percentage of full thread. */
final class TapDrills {
    /** Below this a thread in brass strips (operations of the trade notes, common practice). */
    static final double LEAST = 55;
    /** Above this small taps break. */
    static final double MOST = 85;

    private TapDrills() {}

    /** The drills that leave 55 to 85 percent, nearest the wanted percentage first, at most {@code most}. */
    static List<TapDrill> of(Thread thread, double percent, DrillTable drills, int most) {
        return drills.between(thread.holeFor(MOST), thread.holeFor(LEAST)).stream()
                .map(drill -> tapDrill(thread, drill))
                .sorted(Comparator.comparingDouble(drill -> Math.abs(drill.percent() - percent)))
                .limit(most)
                .toList();
    }

    static TapDrill tapDrill(Thread thread, Drill drill) {
        double percent = Math.rint(thread.percentInHole(drill.diameter()) * 100) / 100;
        return new TapDrill(thread.designation(), drill.text(), drill.diameter(), percent);
    }
}
