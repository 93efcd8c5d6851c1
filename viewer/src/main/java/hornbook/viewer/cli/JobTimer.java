package hornbook.viewer.cli;

import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import java.time.Duration;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Something soaks, dries or sets. */
@Command(
        name = "timer",
        header = "Notes what soaks, dries or sets, and when it is ready.",
        footer = "hornbook job timer j-0239 \"penetrant on the stack rod\" 90")
final class JobTimer extends OnJob {
    @Parameters(index = "1", paramLabel = "WHAT", description = "What soaks, dries or sets.")
    String what = "";

    @Parameters(index = "2", paramLabel = "MIN", description = "For how many minutes.")
    int minutes;

    JobTimer(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        if (minutes <= 0) {
            throw new BadInput(minutes + " minutes is no while: name one or more");
        }
        return workshop.standingBook().timer(job, what, Duration.ofMinutes(minutes));
    }
}
