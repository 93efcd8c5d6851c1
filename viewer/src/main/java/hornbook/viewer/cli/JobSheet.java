package hornbook.viewer.cli;

import hornbook.shared.job.JobCard;
import hornbook.shared.shop.Counted;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.Printed;
import hornbook.viewer.paper.owner.HandBack;
import hornbook.viewer.sheet.OwnerSheets;
import hornbook.viewer.workshop.Workshop;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The paper that goes back with a horn. */
@Command(
        name = "sheet",
        header = "Prints what goes back with the horn: what was done and not, what went in, marks agreed, settling in.",
        footer = "hornbook job sheet j-0234 --pdf back.pdf")
final class JobSheet implements Callable<Integer> {
    @Parameters(paramLabel = "JOB", description = "Its number.")
    String id = "";

    @Option(names = "--pdf", paramLabel = "FILE", required = true, description = "The file to write.")
    Path pdf = Path.of("");

    @Option(names = "--paper", paramLabel = "a4|letter", defaultValue = "a4", description = "The sheet; else a4.")
    String paper = "";

    @Option(names = "--not", paramLabel = "WORDS", description = "What was not done; may be given again.")
    List<String> notDone = List.of();

    @Option(names = "--left", paramLabel = "WORDS", description = "A known fault that stays; may be given again.")
    List<String> faultsLeft = List.of();

    @Option(names = "--billed", paramLabel = "MONEY", description = "What is to pay.")
    @Nullable
    BigDecimal billed;

    @Option(names = "--with-owner", description = "Print the owner's code; never a name.")
    boolean withOwner;

    private final Frame frame;

    JobSheet(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        return frame.reading(workshop ->
                workshop.jobs().job(id).map(card -> print(workshop, card)).orElseGet(() -> frame.notThere("job", id)));
    }

    private int print(Workshop workshop, JobCard card) {
        Printed printed = new OwnerSheets(workshop, PaperSize.named(paper))
                .handBack(
                        card,
                        new HandBack(null, notDone, faultsLeft, billed),
                        withOwner,
                        frame.around().here().resolve(pdf).normalize());
        return frame.answer(printed, out -> out.println(printed.file() + "  " + Counted.of(printed.pages(), "page")));
    }
}
