package hornbook.viewer.cli;

import hornbook.shared.job.Ended;
import hornbook.shared.shop.Went;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** How it went. */
@Command(
        name = "close",
        header = "Closes a job: how it went, in a grade and a sentence.",
        footer = "hornbook job close j-0242 smooth \"the screw was the wrong pitch\"")
final class JobClose extends OnJob {
    @Parameters(index = "1", paramLabel = "GRADE", description = "smooth, fair or rough.")
    String grade = "";

    @Parameters(index = "2", paramLabel = "SENTENCE", arity = "0..1", description = "What the next one should know.")
    String sentence = "";

    JobClose(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        return workshop.closing()
                .close(job, new Ended(OneOf.of(Went.values()).read(grade, "is no grade"), sentence, false));
    }
}
