package hornbook.catalogue.estimate;

import java.util.List;

/**
 * Minutes that the work may take.
 *
 * @param p50Min as often under as over
 * @param p80Min under in four of five
 * @param bookMin sum of the book's medians
 * @param fromJobs how many closed jobs with clocks speak of it
 * @param drives the task whose doubt moves the sum most
 * @param lines task by task
 * @param leftOut clocks too far off to be believed: they have no say until they are put right
 * @param remarks what the answer lacks, in words
 */
public record EstimateAnswer(
        long p50Min,
        long p80Min,
        long bookMin,
        FromJobs fromJobs,
        String drives,
        List<Line> lines,
        List<LeftOut> leftOut,
        List<String> remarks) {

    /** Closed jobs with clocks: all, and those of this instrument, make and model. */
    public record FromJobs(int all, int instrument, int make, int model) {}

    /**
     * One task of the list.
     *
     * @param share of the doubt about the sum, 0 to 1
     */
    public record Line(String task, String title, int count, long p50Min, long p80Min, double share) {}

    /**
     * A clock that was left out.
     *
     * @param minutes as clocked, for the whole count
     * @param bookMin what the book says of it
     */
    public record LeftOut(String job, String task, int count, int minutes, long bookMin) {}
}
