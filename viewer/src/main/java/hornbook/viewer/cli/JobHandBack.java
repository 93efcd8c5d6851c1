package hornbook.viewer.cli;

import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import picocli.CommandLine.Command;

/** The horn goes back to its owner. */
@Command(
        name = "hand-back",
        header = "Notes that the horn went back to its owner.",
        footer = "hornbook job hand-back j-0234")
final class JobHandBack extends OnJob {
    JobHandBack(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        return workshop.afterCare().handBack(job);
    }
}
