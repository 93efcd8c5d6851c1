package hornbook.viewer.cli;

import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Deed;
import hornbook.shared.supply.Verdict;
import hornbook.viewer.workshop.Workshop;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Whether to buy again. */
@Command(
        name = "verdict",
        header = "Writes down whether to buy again, of a supplier or of one lot's goods, and why.",
        footer = "hornbook restock verdict lot-0748 keep \"blued evenly, none snapped in twenty\"")
final class VerdictCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "SUPPLIER|LOT", description = "By number: sup-v-… or lot-….")
    String of = "";

    @Parameters(index = "1", paramLabel = "VERDICT", description = "keep, avoid or on-trial.")
    String verdict = "";

    @Parameters(index = "2", paramLabel = "WHY", description = "What a test or use showed, in a sentence.")
    String why = "";

    private final Frame frame;

    VerdictCommand(Frame frame) {
        this.frame = frame;
    }

    /** The deed. */
    record After(Deed deed) {}

    @Override
    public Integer call() {
        return frame.writing(workshop -> {
            After after = new After(done(workshop));
            return frame.answer(
                    after,
                    out -> out.println("deed " + after.deed().number() + ": "
                            + after.deed().title() + " (“hornbook undo” takes it back)"));
        });
    }

    private Deed done(Workshop workshop) {
        Verdict said = Arrays.stream(Verdict.values())
                .filter(v -> word(v).equals(verdict.strip().toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new BadInput("“" + verdict + "” is no verdict: write "
                        + Arrays.stream(Verdict.values())
                                .map(VerdictCommand::word)
                                .collect(Collectors.joining(", "))));
        return of.startsWith("sup-")
                ? workshop.orderBook().supplier(of, said, why)
                : workshop.orderBook().lot(of, said, why);
    }

    private static String word(Verdict verdict) {
        return verdict.written().replace(' ', '-');
    }
}
