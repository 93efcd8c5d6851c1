package hornbook.viewer.cli;

import hornbook.shared.job.JobCard;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import java.util.concurrent.Callable;

/** One thing done about a job: opens the shop, does it, and shows the job as it stands after. */
abstract class JobDeed implements Callable<Integer> {
    final Frame frame;

    JobDeed(Frame frame) {
        this.frame = frame;
    }

    abstract Deed done(Workshop workshop);

    /** The number of the job that it was done to. */
    abstract String job(Workshop workshop, Deed done);

    @Override
    public final Integer call() {
        return frame.writing(workshop -> {
            Deed done = done(workshop);
            JobCard card = workshop.jobs().job(job(workshop, done)).orElseThrow();
            return frame.answer(card, out -> JobText.after(out, card, done));
        });
    }
}
