package hornbook.viewer.cli;

import hornbook.shared.job.JobCard;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;

/** One thing done about a job: it is shown as it stands after. */
abstract class JobDeed extends OneDeed {
    JobDeed(Frame frame) {
        super(frame);
    }

    /** The number of the job that it was done to. */
    abstract String job(Workshop workshop, Deed done);

    @Override
    final Left left(Workshop workshop, Deed done) {
        JobCard card = workshop.jobs().job(job(workshop, done)).orElseThrow();
        return new Left(card, out -> new JobText(workshop).after(out, card));
    }
}
