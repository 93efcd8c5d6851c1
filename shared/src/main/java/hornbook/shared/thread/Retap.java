package hornbook.shared.thread;

import hornbook.shared.measure.Drill;
import hornbook.shared.measure.Length;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.measure.Thread;
import hornbook.shared.measure.ThreadSystem;
import hornbook.shared.thread.ThreadAnswer.NextUp;
import hornbook.shared.thread.ThreadAnswer.NotUp;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The next thread up for a stripped hole: 50 to 85 percent of thread in the hole as it is, or drilled; 0.8 mm of metal
 * left; no larger than what the screw has to pass; the same pitch in an undrilled hole first, since the tap follows the old
 * turns (common practice).
 */
final class Retap {
    private static final double LEAST = 50;
    private static final double MOST = 85;
    private static final Length WALL = Length.ofMillimetres("0.8");
    /** No use looking further up than this over the hole. */
    private static final Length REACH = Length.ofMillimetres("1.6");

    /** With less thread than this nobody would think of it, percent. */
    private static final double WORTH_SAYING = 20;

    private static final double SAME_PITCH = 0.01;
    private static final String FOR_GOOD =
            "takes the horn's own thread for good: ask the owner, write it down;" + " a bush keeps the old thread";

    private final StandardSizes tables;
    private final Length hole;
    private final Optional<Double> pitch;
    private final Optional<Length> wall;
    private final Optional<Length> through;

    /**
     * @param hole the stripped hole, as it is
     * @param pitch of the old thread, mm
     */
    Retap(StandardSizes tables, Length hole, Optional<Double> pitch, Optional<Length> wall, Optional<Length> through) {
        this.tables = tables;
        this.hole = hole;
        this.pitch = pitch;
        this.wall = wall;
        this.through = through;
    }

    List<NextUp> up(int most) {
        return larger().stream()
                .filter(thread -> against(thread).isEmpty())
                .map(this::nextUp)
                .sorted(Comparator.comparing(NextUp::followsOldTurns).reversed())
                .limit(most)
                .toList();
    }

    List<NotUp> notUp(int most) {
        return larger().stream()
                .filter(thread -> thread.percentInHole(hole) >= WORTH_SAYING)
                .sorted(Comparator.comparing(Thread::major))
                .flatMap(thread -> against(thread).map(why -> new NotUp(thread.designation(), why)).stream())
                .limit(most)
                .toList();
    }

    /** No taps are made for Loewenherz. Current standards before withdrawn ones, then the least metal taken. */
    private List<Thread> larger() {
        return tables.threads().threads().stream()
                .filter(thread -> thread.system() != ThreadSystem.LOEWENHERZ
                        && thread.major().compareTo(hole) > 0
                        && thread.major().minus(hole).compareTo(REACH) <= 0)
                .sorted(Comparator.comparing(Thread::rare).thenComparing(Thread::major))
                .toList();
    }

    private Optional<String> against(Thread thread) {
        double percent = thread.percentInHole(hole);
        if (percent < LEAST) {
            return Optional.of(
                    String.format(Locale.ROOT, "only %.1f %% of thread in %s", percent, hole.inMillimetres()));
        }
        if (through.isPresent() && thread.major().compareTo(through.get()) > 0) {
            return Optional.of(thread.major().inMillimetres() + " is larger than the "
                    + through.get().inMillimetres() + " it has to pass");
        }
        if (wallLeft(thread).filter(left -> left.compareTo(WALL) < 0).isPresent()) {
            return Optional.of(
                    "leaves " + wallLeft(thread).get().inMillimetres() + " of wall, wants " + WALL.inMillimetres());
        }
        return percent > MOST && drill(thread).isEmpty()
                ? Optional.of(String.format(Locale.ROOT, "%.1f %% as it is, and no drill brings it under 85", percent))
                : Optional.empty();
    }

    private Optional<Length> wallLeft(Thread thread) {
        return wall.map(round -> round.minus(taken(thread)));
    }

    private Length taken(Thread thread) {
        return new Length(thread.major().minus(hole).nanometres() / 2);
    }

    /** The drill nearest the usual percentage, where the hole as it is would leave too much. */
    private Optional<Drill> drill(Thread thread) {
        return tables.drills().between(thread.holeFor(MOST), thread.holeFor(LEAST)).stream()
                .filter(drill -> drill.diameter().compareTo(hole) > 0)
                .min(Comparator.comparingDouble(
                        drill -> Math.abs(thread.percentInHole(drill.diameter()) - ThreadQuestion.USUAL_PERCENT)));
    }

    private NextUp nextUp(Thread thread) {
        Optional<Drill> drill = thread.percentInHole(hole) > MOST ? drill(thread) : Optional.empty();
        Length tapped = drill.map(Drill::diameter).orElse(hole);
        // Drilling takes the old turns away, so only an undrilled hole can guide the tap.
        boolean follows = drill.isEmpty()
                && pitch.map(old -> Math.abs(thread.pitch().mm() - old) <= SAME_PITCH * old)
                        .orElse(false);
        return new NextUp(
                thread.designation(),
                drill.map(Drill::text),
                tapped,
                Math.rint(thread.percentInHole(tapped) * 10) / 10,
                follows,
                wallLeft(thread),
                WALL.plus(taken(thread)),
                FOR_GOOD);
    }
}
