package hornbook.viewer.cli;

import hornbook.catalogue.called.Called;
import hornbook.shared.job.PadFitted;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A pad goes in. */
@Command(
        name = "pad",
        header = "Notes a pad that went into a cup, and takes it out of its lot.",
        footer = "hornbook job pad j-0240 cup-f 31 --lot lot-0553")
final class JobPad extends OnJob {
    @Parameters(index = "1", paramLabel = "CUP", description = "Which cup, as cup-f.")
    String cup = "";

    @Parameters(index = "2", paramLabel = "SIZE", description = "The pad's size, mm.")
    BigDecimal size = BigDecimal.ZERO;

    @Option(names = "--lot", paramLabel = "LOT", description = "The lot it came out of.")
    @Nullable
    String lot;

    @Option(names = "--thickness", paramLabel = "MM", description = "The pad's thickness, mm.")
    @Nullable
    BigDecimal thickness;

    @Option(names = "--again", description = "Another pad went in where there is one by the books.")
    boolean again;

    JobPad(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        String into = Called.cups(workshop.catalogue()).find(cup).id();
        return workshop.jobBook().pad(job, new PadFitted(into, null, size, thickness, lot, "", again));
    }
}
