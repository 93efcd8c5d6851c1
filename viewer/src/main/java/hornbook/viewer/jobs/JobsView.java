package hornbook.viewer.jobs;

import hornbook.indexer.brief.PastJob;
import hornbook.shared.job.AfterCare;
import hornbook.shared.job.OnBench;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.pick.Pick;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the screen shows at one moment.
 *
 * @param known was the bench read yet
 * @param bench jobs not handed back, the promised first
 * @param due jobs whose horn should come by again
 * @param page the job in view
 * @param kin past jobs that may teach something about it; they come a moment later
 * @param expected the work expected and its minutes, once asked for
 * @param act what is being asked about
 * @param ask the question
 * @param pick the choice
 * @param remark a question that a reading raised; it bars nothing
 * @param trouble what was refused
 */
record JobsView(
        boolean known,
        List<OnBench> bench,
        List<AfterCare.Due> due,
        @Nullable JobPage page,
        List<PastJob> kin,
        @Nullable Expected expected,
        @Nullable Act act,
        @Nullable Ask ask,
        @Nullable Pick pick,
        @Nullable String remark,
        @Nullable String trouble) {
    static final JobsView NOTHING =
            new JobsView(false, List.of(), List.of(), null, List.of(), null, null, null, null, null, null);

    JobsView with(List<OnBench> jobs, List<AfterCare.Due> followUps) {
        return new JobsView(true, jobs, followUps, page, kin, expected, act, ask, pick, remark, trouble);
    }

    JobsView showing(@Nullable JobPage job) {
        boolean same = job != null
                && page != null
                && job.card().id().equals(page.card().id());
        return same
                ? new JobsView(known, bench, due, job, kin, expected, act, ask, pick, remark, trouble)
                : new JobsView(known, bench, due, job, List.of(), null, null, null, null, null, null);
    }

    JobsView withKin(List<PastJob> jobs) {
        return new JobsView(known, bench, due, page, jobs, expected, act, ask, pick, remark, trouble);
    }

    JobsView expecting(Expected work) {
        return new JobsView(known, bench, due, page, kin, work, null, null, null, remark, trouble);
    }

    /** Until it is known what is to be asked or chosen; no key begins anything else. */
    JobsView beginning(Act what) {
        return new JobsView(known, bench, due, page, kin, expected, what, null, null, remark, null);
    }

    /** Other things to choose from. */
    JobsView finding(Pick others) {
        return pick == null
                ? this
                : new JobsView(known, bench, due, page, kin, expected, act, null, others, remark, null);
    }

    JobsView asking(Act what, Ask question) {
        return new JobsView(known, bench, due, page, kin, expected, what, question, null, null, null);
    }

    JobsView picking(Act what, Pick choice) {
        return new JobsView(known, bench, due, page, kin, expected, what, null, choice, null, null);
    }

    JobsView answered() {
        return new JobsView(known, bench, due, page, kin, expected, null, null, null, remark, null);
    }

    JobsView remarking(@Nullable String question) {
        return new JobsView(known, bench, due, page, kin, expected, act, ask, pick, question, trouble);
    }

    /** The job alone: nothing asked, said or expected. */
    JobsView plain() {
        return new JobsView(known, bench, due, page, kin, null, null, null, null, null, null);
    }

    JobsView troubled(String why) {
        return new JobsView(
                known,
                bench,
                due,
                page,
                kin,
                expected,
                ask == null && pick == null ? null : act,
                ask == null ? null : ask.troubled(why),
                pick == null ? null : pick.troubled(why),
                remark,
                ask == null && pick == null ? why : null);
    }

    /** Is something being asked or chosen? */
    boolean asks() {
        return act != null;
    }
}
