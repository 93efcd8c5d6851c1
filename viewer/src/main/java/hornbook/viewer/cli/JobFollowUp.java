package hornbook.viewer.cli;

import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** It came by after settling in. */
@Command(
        name = "follow-up",
        header = "Notes the settling-in check, four to eight weeks after.",
        footer = "hornbook job follow-up j-0234 moved \"low C# pad, reseated\"")
final class JobFollowUp extends OnJob {
    @Parameters(index = "1", paramLabel = "FOUND", description = "held, moved or came-back.")
    String found = "";

    @Parameters(index = "2", paramLabel = "WORDS", arity = "0..1", description = "What moved and why.")
    String words = "";

    JobFollowUp(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        String held =
                new OneOf<>(List.of("held", "moved", "came-back"), word -> word).read(found, "is not how it held");
        return workshop.afterCare().followUp(job, held, words);
    }
}
