package hornbook.viewer.cli;

import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import picocli.CommandLine.Command;

/** What the job taught goes into its model's entry. */
@Command(
        name = "teach",
        header = "Writes what a job taught of a horn (map, order of taking down) into its model's entry.",
        footer = "hornbook job teach j-0243")
final class JobTeach extends OnJob {
    JobTeach(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        return workshop.lessons().teach(job);
    }
}
