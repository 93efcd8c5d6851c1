package hornbook.shared.thread;

import hornbook.shared.measure.Thread;
import hornbook.shared.measure.ThreadLimits;

/**
 * A thread it may be.
 *
 * @param probability among all threads of the table
 * @param deviations how far the readings lie from it in all, in standard deviations
 */
record Candidate(Thread thread, ThreadLimits limits, double probability, double deviations) {

    /** Diameter and pitch the same: only the angle tells the two apart. */
    boolean twinOf(Candidate other) {
        return Twins.are(thread, other.thread);
    }
}
