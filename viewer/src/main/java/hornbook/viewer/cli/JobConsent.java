package hornbook.viewer.cli;

import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The owner said yes. */
@Command(
        name = "consent",
        header = "Notes the owner's yes to what cannot be undone or leaves a mark.",
        footer = "hornbook job consent j-0239 \"try the frozen rod\" --by O-040")
final class JobConsent extends OnJob {
    @Parameters(index = "1", paramLabel = "WHAT", description = "What the owner agreed to.")
    String what = "";

    @Option(names = "--by", paramLabel = "CODE", required = true, description = "Who said yes: a code, never a name.")
    String by = "";

    JobConsent(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        return workshop.jobBook().consent(job, what, by);
    }
}
