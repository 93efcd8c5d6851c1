package hornbook.viewer.cli;

import hornbook.catalogue.called.Called;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The clock starts. */
@Command(
        name = "start",
        header = "Starts the clock on a task; your other clock stops.",
        footer = "hornbook job start j-0237 task-teardown")
final class JobStart extends OnJob {
    @Parameters(
            index = "1",
            paramLabel = "TASK",
            arity = "0..1",
            description = "What is worked on, as “pads out”; goes on with the last one if left out.")
    String task = "";

    @Option(names = "--count", paramLabel = "N", description = "How many cups, keys, screws.")
    int count = 1;

    @Option(names = "--who", paramLabel = "WHO", description = "Initials of who works.")
    @Nullable
    String who;

    JobStart(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        String hands = workshop.worker(who);
        return task.isEmpty()
                ? workshop.clocks().goOn(job, hands)
                : workshop.clocks()
                        .start(
                                job,
                                Called.tasks(workshop.catalogue()).find(task).id(),
                                count,
                                hands);
    }
}
