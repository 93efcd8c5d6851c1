package hornbook.shared.thread;

import hornbook.shared.measure.Length;
import hornbook.shared.measure.Thread;

/** Threads of two standards with one diameter and one pitch: M3x0.5 and S3, M6x1 and 0 BA, 1/4-20 UNC and BSW. */
final class Twins {
    private static final Length SAME = Length.ofMillimetres("0.001");

    private Twins() {}

    static boolean are(Thread one, Thread two) {
        return one.major().minus(two.major()).abs().compareTo(SAME) <= 0
                && one.pitch().compareTo(two.pitch()) == 0;
    }
}
