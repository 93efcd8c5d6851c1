package hornbook.viewer.cli;

import hornbook.catalogue.called.Called;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Minutes that no clock saw. */
@Command(
        name = "told",
        header = "Notes minutes that no clock saw.",
        footer = "hornbook job told j-0237 task-inspect 20")
final class JobTold extends OnJob {
    @Parameters(index = "1", paramLabel = "TASK", description = "What was worked on.")
    String task = "";

    @Parameters(index = "2", paramLabel = "MIN", description = "How long, minutes.")
    int minutes;

    @Option(names = "--count", paramLabel = "N", description = "How many cups, keys, screws.")
    int count = 1;

    @Option(names = "--on", paramLabel = "DATE", converter = Day.class, description = "Which day; today if left out.")
    @Nullable
    LocalDate day;

    @Option(names = "--who", paramLabel = "WHO", description = "Initials of who worked.")
    @Nullable
    String who;

    JobTold(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        return workshop.clocks()
                .told(
                        job,
                        Called.tasks(workshop.catalogue()).find(task).id(),
                        count,
                        minutes,
                        day,
                        workshop.worker(who));
    }
}
