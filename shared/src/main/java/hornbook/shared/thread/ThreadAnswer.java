package hornbook.shared.thread;

import hornbook.shared.measure.Length;
import hornbook.shared.measure.ThreadLimits;
import java.util.List;
import java.util.Optional;

/**
 * What a thread can be.
 *
 * @param threads likeliest first; empty if no standard thread fits the readings
 * @param nearest what comes nearest, where none fits: said, never taken
 * @param stripped threads of the pitch read whose hole could be worn to this size: what the hole may have been
 * @param limits of the likely ones
 * @param tapDrills for them, nearest the wanted percentage first
 * @param nextUp threads that clean up the hole once stripped, best first
 * @param notUp the nearest that do not, and why
 * @param lookAlikes what would start and then bind, or run home wrongly
 * @param apart how the likely ones are told from one another
 */
public record ThreadAnswer(
        List<LikelyThread> threads,
        List<String> nearest,
        List<Stripped> stripped,
        List<ThreadLimits> limits,
        List<TapDrill> tapDrills,
        List<NextUp> nextUp,
        List<NotUp> notUp,
        List<LookAlike> lookAlikes,
        List<Apart> apart) {

    /**
     * A thread it may be.
     *
     * @param standard for people: {@code ISO metric, coarse}
     * @param angle of the form, degrees
     */
    public record LikelyThread(
            String designation,
            String standard,
            double probability,
            Optional<String> note,
            Length major,
            Length pitch,
            double threadsPerInch,
            double angle,
            String source,
            String sureness) {}

    /**
     * A thread whose crests are gone.
     *
     * @param percentLeft of full thread in the hole as it is
     */
    public record Stripped(String designation, double percentLeft) {}

    /**
     * A drill for a thread.
     *
     * @param percent of full thread it leaves
     */
    public record TapDrill(String designation, String drill, Length diameter, double percent) {}

    /**
     * A larger thread for a stripped hole.
     *
     * @param drill empty where the hole is tapped as it is
     * @param hole diameter to be tapped
     * @param percent of full thread it leaves
     * @param followsOldTurns whether the tap is of the old pitch and the hole is not drilled
     * @param wallLeft metal left over the crests of the new screw, where the wall was given
     * @param wallNeeded metal that must stand round the hole as it is now
     */
    public record NextUp(
            String designation,
            Optional<String> drill,
            Length hole,
            double percent,
            boolean followsOldTurns,
            Optional<Length> wallLeft,
            Length wallNeeded,
            String note) {}

    /** A larger thread that will not do. */
    public record NotUp(String designation, String why) {}

    /**
     * A screw in a hole of another thread.
     *
     * @param bindsAfterTurns turns until it jams; empty where it runs home over 5 mm and only feels loose
     */
    public record LookAlike(String screw, String hole, Optional<Double> bindsAfterTurns, String note) {}

    /**
     * How two threads are told apart.
     *
     * @param withGaugeInHand whether calliper ± 0.02 mm and pitch gauge can do it
     */
    public record Apart(String one, String other, boolean withGaugeInHand, String look) {}
}
