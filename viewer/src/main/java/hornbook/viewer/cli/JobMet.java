package hornbook.viewer.cli;

import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** A quirk was met. */
@Command(
        name = "met",
        header = "Notes that a quirk was met on the job: the next brief knows.",
        footer = "hornbook job met j-0237 q-threaded-bearing")
final class JobMet extends OnJob {
    @Parameters(index = "1", paramLabel = "QUIRK", description = "Which quirk.")
    String quirk = "";

    JobMet(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        if (!workshop.catalogue().quirks().containsKey(quirk)) {
            throw new BadInput(
                    "“" + quirk + "” is no quirk that is known: look it up with “hornbook find --kind" + " quirk”");
        }
        return workshop.jobBook().met(job, quirk);
    }
}
