package hornbook.viewer.cli;

import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** It is done soaking, or no longer wanted. */
@Command(
        name = "ready",
        header = "Puts a timer away that is done or no longer wanted.",
        footer = "hornbook job ready j-0237 timer-0001")
final class JobReady extends OnJob {
    @Parameters(index = "1", paramLabel = "TIMER", description = "Its number, as “hornbook job show” tells it.")
    String timer = "";

    JobReady(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        return workshop.standingBook().timerDone(timer);
    }
}
