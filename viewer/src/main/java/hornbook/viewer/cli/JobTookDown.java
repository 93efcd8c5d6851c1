package hornbook.viewer.cli;

import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A step of taking down, as it went. */
@Command(
        name = "took-down",
        header = "Notes the next step of taking the horn down, as it went.",
        footer = "hornbook job took-down j-0237 \"lower stack rod\" \"draws out at the bottom\"")
final class JobTookDown extends OnJob {
    @Parameters(index = "1", paramLabel = "PIECE", description = "What came off.")
    String piece = "";

    @Parameters(index = "2", paramLabel = "HOW", description = "How it came off.")
    String how = "";

    @Option(names = "--why", paramLabel = "WORDS", description = "Why then and not later.")
    String why = "";

    JobTookDown(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        return workshop.jobBook().tookDown(job, piece, how, why);
    }
}
