package hornbook.viewer.cli;

import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import picocli.CommandLine.Parameters;

/** One thing done on a job that is there already. */
abstract class OnJob extends JobDeed {
    @Parameters(index = "0", paramLabel = "JOB", description = "Its number.")
    String job = "";

    OnJob(Frame frame) {
        super(frame);
    }

    @Override
    final String job(Workshop workshop, Deed done) {
        return job;
    }
}
