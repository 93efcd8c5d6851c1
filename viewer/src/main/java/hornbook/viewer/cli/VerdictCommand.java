package hornbook.viewer.cli;

import hornbook.shared.store.Deed;
import hornbook.shared.supply.Verdict;
import hornbook.viewer.workshop.Workshop;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Whether to buy again. */
@Command(
        name = "verdict",
        header = "Writes down whether to buy again, of a supplier or of one lot's goods, and why.",
        footer = "hornbook restock verdict lot-0748 keep \"blued evenly, none snapped in twenty\"")
final class VerdictCommand extends OneDeed {
    @Parameters(
            index = "0",
            paramLabel = "SUPPLIER|LOT",
            description = "A supplier by name or number, or a lot by its number.")
    String of = "";

    @Parameters(index = "1", paramLabel = "VERDICT", description = "keep, avoid or on-trial.")
    String verdict = "";

    @Parameters(index = "2", paramLabel = "WHY", description = "What a test or use showed, in a sentence.")
    String why = "";

    VerdictCommand(Frame frame) {
        super(frame);
    }

    /** The deed. */
    record After(Deed deed) {}

    @Override
    Left left(Workshop workshop, Deed done) {
        return new Left(new After(done), out -> {});
    }

    @Override
    Deed done(Workshop workshop) {
        Verdict said =
                new OneOf<>(List.of(Verdict.values()), VerdictCommand::word).read(verdict.strip(), "is no verdict");
        return of.startsWith("lot-")
                ? workshop.orderBook().lot(of, said, why)
                : workshop.orderBook().supplier(of, said, why);
    }

    private static String word(Verdict verdict) {
        return verdict.written().replace(' ', '-');
    }
}
