package hornbook.shared.measure;

import java.util.Optional;
import java.util.Set;

/**
 * What a written designation says of the thread it means.
 *
 * @param systems the standards it can belong to
 * @param major nominal diameter
 * @param pitch empty where it was left out ({@code M3}, {@code 1/8 BSW})
 * @param start what the designation begins with: {@code 1/8-} is never {@code 5-}, though both are .125 in; else empty
 * @param series start of the series' name; empty where none was written
 */
record ThreadWriting(
        Set<ThreadSystem> systems, Length major, Optional<Pitch> pitch, Optional<String> series, String start) {
    /** The tables round 3/32 in and the like; two sizes of one system are never this near. */
    private static final Length SAME = new Length(1_000);

    boolean allows(Thread thread) {
        return systems.contains(thread.system())
                && thread.designation().startsWith(start)
                && thread.major().minus(major).abs().compareTo(SAME) <= 0
                && pitch.map(written -> written.compareTo(thread.pitch()) == 0).orElse(true)
                && series.map(written -> thread.series().startsWith(written)).orElse(true);
    }

    /** How far a thread lies from what was written: a pitch out by 0.05 mm counts as a diameter out by 0.1 mm. */
    double distance(Thread thread) {
        double across = Math.abs(thread.major().minus(major).mm());
        double along = pitch.map(
                        written -> Math.abs(written.mm() - thread.pitch().mm()))
                .orElse(0.0);
        double named = series.map(written -> thread.series().startsWith(written) ? 0.0 : 0.001)
                .orElse(0.0);
        return across + 2 * along + named;
    }
}
