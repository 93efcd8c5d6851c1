package hornbook.viewer.cli;

import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Where the horn or a piece of it is, and what it waits for. */
@Command(
        name = "where",
        header = "Notes where the horn or a piece of it is, and what it waits for.",
        footer = "hornbook job where j-0239 horn \"hook 2\" --waits \"lower stack rod\"")
final class JobWhere extends OnJob {
    @Parameters(index = "1", paramLabel = "PIECE", description = "horn, or what is apart from it.")
    String piece = "";

    @Parameters(index = "2", paramLabel = "PLACE", description = "Where it is.")
    String place = "";

    @Option(names = "--waits", paramLabel = "FOR", description = "What it waits for.")
    String waits = "";

    JobWhere(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        return workshop.standingBook().whereabouts(job, piece, place, waits);
    }
}
