package hornbook.viewer.cli;

import hornbook.shared.stock.Taking;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A part goes in. */
@Command(
        name = "part",
        header = "Notes parts or supplies used, and takes them out of their lot.",
        footer = "hornbook job part j-0237 lot-0933 2 --for \"bearing sleeves\"")
final class JobPart extends OnJob {
    @Parameters(index = "1", paramLabel = "LOT", description = "The lot they came out of.")
    String lot = "";

    @Parameters(
            index = "2",
            paramLabel = "N",
            arity = "0..1",
            defaultValue = "1",
            description = "How many; one if left out.")
    int pieces = 1;

    @Option(names = "--for", paramLabel = "WORDS", description = "What for.")
    String whatFor = "";

    @Option(names = "--reserve", description = "Take from the reserve all the same.")
    boolean reserve;

    JobPart(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        return workshop.stockBook().use(new Taking(lot, pieces, job, whatFor, reserve));
    }
}
