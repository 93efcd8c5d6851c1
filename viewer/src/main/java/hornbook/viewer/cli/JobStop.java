package hornbook.viewer.cli;

import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The clock stops. */
@Command(name = "stop", header = "Stops the clock on a job.", footer = "hornbook job stop j-0237 --minutes 25")
final class JobStop extends OnJob {
    @Option(
            names = "--minutes",
            paramLabel = "N",
            description = "How long it really took, where the clock was forgotten.")
    @Nullable
    Integer minutes;

    @Option(names = "--who", paramLabel = "WHO", description = "Whose clock, where several run.")
    @Nullable
    String who;

    JobStop(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        return workshop.clocks().stop(job, who, minutes);
    }
}
