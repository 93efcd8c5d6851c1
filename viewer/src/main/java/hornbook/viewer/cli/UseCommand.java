package hornbook.viewer.cli;

import hornbook.shared.stock.Taking;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes pieces out of a lot. */
@Command(
        name = "use",
        header = "Takes pieces out of a lot, for a job or for none.",
        footer = "hornbook stock use lot-0260 1 --job j-0238")
final class UseCommand extends StockDeed.OnLot {
    @Parameters(
            index = "1",
            paramLabel = "N",
            arity = "0..1",
            defaultValue = "1",
            description = "How many; one if left out.")
    int pieces = 1;

    @Option(names = "--job", paramLabel = "JOB", description = "The job they are for.")
    @Nullable
    String job;

    @Option(names = "--for", paramLabel = "WORDS", description = "What they are for.")
    String whatFor = "";

    @Option(names = "--reserve", description = "Take from the reserve all the same.")
    boolean reserve;

    UseCommand(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        return workshop.stockBook().use(new Taking(lot, pieces, job, whatFor, reserve));
    }
}
