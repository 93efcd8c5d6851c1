package hornbook.catalogue.diagnose;

import hornbook.catalogue.entry.CautionLevel;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What may be wrong, and what to look at next.
 *
 * @param faults the symptoms the words were read as, likeliest first; none where they were not understood
 * @param causes likeliest first
 * @param somethingElse the chance that it is none of them
 * @param advice what to do now
 * @param why its reason, in words
 * @param next the check to make now; missing where there is none worth making
 * @param then ids of the checks after it, in order, as long as each says no
 * @param minutesToFind bench minutes, on average, until the cause is found or all checks are made
 * @param minutesToCure the same and the usual minutes of the cure
 * @param cure of the likeliest cause
 * @param fromJobs closed jobs of this shop with such a complaint or finding
 * @param foundHere what those jobs were found to have, most often first
 * @param remarks what the answer rests on or lacks, in words
 * @param nearest names of symptoms that were perhaps meant, where the words were not understood
 */
public record DiagnoseAnswer(
        String symptom,
        List<FaultLine> faults,
        List<CauseLine> causes,
        double somethingElse,
        Advice advice,
        String why,
        @Nullable NextCheck next,
        List<String> then,
        double minutesToFind,
        double minutesToCure,
        @Nullable Cure cure,
        int fromJobs,
        List<FoundLine> foundHere,
        List<String> remarks,
        List<String> nearest) {

    /** A symptom, and how likely the words mean it. */
    public record FaultLine(String id, String title, double probability) {}

    /**
     * A cause.
     *
     * @param id of the cause and of the check that settles it
     * @param fault id of the symptom it is a cause of
     * @param answer what the check said; missing where it was not made
     * @param jobs closed jobs of this shop that had it
     */
    public record CauseLine(
            String id,
            String text,
            String fault,
            double probability,
            @Nullable Boolean answer,
            int jobs) {}

    /**
     * A check.
     *
     * @param minutes bench minutes, without the set-up
     * @param setUp what must be made ready first; missing where nothing, or it is ready
     * @param setUpMinutes to make it ready
     * @param probability that it says yes
     * @param worth chance of finding the cause a minute, with the checks that then need no set-up
     * @param needsYes a key comes off: not before the owner's yes
     * @param tools what it is made with; none where hands and eyes do
     */
    public record NextCheck(
            String id,
            String question,
            double minutes,
            @Nullable String setUp,
            double setUpMinutes,
            double probability,
            double worth,
            boolean needsYes,
            List<ToolLine> tools) {}

    /** A kind of tool. */
    public record ToolLine(String id, String title) {}

    /**
     * How the likeliest cause is cured.
     *
     * @param minutesLow of a usual case on alto or tenor, waiting not counted
     * @param per what the minutes are for
     * @param tasks what the clock will run on: what to ask an estimate for
     * @param quirks what to read first
     * @param cautions how what is used can hurt; the safety data sheet of the product in hand decides
     */
    public record Cure(
            String cause,
            String fault,
            String remedy,
            double minutesLow,
            double minutesHigh,
            String per,
            List<TaskLine> tasks,
            List<QuirkLine> quirks,
            List<CautionLine> cautions) {}

    /** A task that cures it. */
    public record TaskLine(String id, String title) {}

    /** A quirk to read first. */
    public record QuirkLine(String id, String title, CautionLevel caution, String whatToDo) {}

    /** What can hurt, and what to wear and do. */
    public record CautionLine(String id, String title, String text) {}

    /** A fault found on past jobs with such a complaint. */
    public record FoundLine(String id, String title, int jobs) {}
}
