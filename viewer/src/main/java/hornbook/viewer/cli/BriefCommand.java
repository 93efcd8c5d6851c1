package hornbook.viewer.cli;

import hornbook.catalogue.called.Called;
import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.CautionLevel;
import hornbook.catalogue.identify.Question;
import hornbook.indexer.brief.BriefAnswer;
import hornbook.indexer.brief.BriefQuestion;
import hornbook.indexer.brief.Fetch;
import hornbook.indexer.brief.PastJob;
import hornbook.indexer.brief.QuirkLine;
import hornbook.indexer.brief.ThreadLine;
import hornbook.shared.shop.Counted;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.brief.BriefPaper;
import hornbook.viewer.workshop.Workshop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What to know before the first screw is turned. */
@Command(
        name = "brief",
        header = "What to know before the first screw is turned: what bites, what to fetch, how the last one went.",
        footer = "hornbook brief --horn h-194")
final class BriefCommand implements Callable<Integer> {
    private static final int JOBS_SHOWN = 6;

    @Mixin
    SeeOptions see = new SeeOptions();

    @Option(names = "--model", paramLabel = "M", description = "Take it to be that model, by name or id.")
    @Nullable
    String model;

    @Option(names = "--reserve", description = "Offer what is set aside, too.")
    boolean reserve;

    @Option(names = "--pdf", paramLabel = "FILE", description = "Print it on two pages at most, to lie by the horn.")
    @Nullable
    Path pdf;

    @Option(names = "--paper", paramLabel = "a4|letter", defaultValue = "a4", description = "The sheet; else a4.")
    String paper = "";

    private final Frame frame;

    BriefCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        return frame.reading(workshop -> {
            BriefAnswer brief = workshop.brief().answer(new BriefQuestion(question(workshop), reserve));
            Path file = pdf;
            if (file != null) {
                BriefPaper.Printed printed = new BriefPaper(workshop.catalogue(), PaperSize.named(paper))
                        .print(
                                brief,
                                about(workshop),
                                frame.around().here().resolve(file).normalize());
                frame.say(printed.file() + "  " + Counted.of(printed.pages(), "page"));
            }
            return frame.answer(brief, out -> print(out, brief, workshop.catalogue()));
        });
    }

    private Question question(Workshop workshop) {
        Question seen = see.question(workshop);
        return model == null
                ? seen
                : seen.takenFor(Called.models(workshop.catalogue()).find(model).id());
    }

    private String about(Workshop workshop) {
        return Stream.of(see.horn, see.job, see.serial, workshop.books().today().toString())
                .filter(Objects::nonNull)
                .collect(Collectors.joining(", "));
    }

    private static void print(PrintWriter out, BriefAnswer brief, Catalogue known) {
        out.println(brief.says());
        brief.quirks().stream()
                .filter(quirk -> quirk.caution() == CautionLevel.STOP)
                .forEach(quirk -> out.println("STOP  " + (quirk.possible() ? "possible: " : "") + quirk.title()));
        out.println();
        brief.quirks().forEach(quirk -> print(out, quirk, known));
        out.println("\nFETCH");
        brief.fetch().forEach(fetch -> print(out, fetch));
        out.println("\nTHREADS");
        brief.threads().forEach(thread -> print(out, thread));
        if (!brief.takingDown().isEmpty()) {
            out.println("\nTAKING DOWN"
                    + (brief.takingDownOf() == null ? "" : " (from " + known.title(brief.takingDownOf()) + ")"));
            brief.takingDown()
                    .forEach(step -> out.println("  " + step.step() + ". " + step.piece() + ": " + step.how()
                            + (step.reason() == null ? "" : " (" + step.reason() + ")")));
        }
        out.println("\nPAST JOBS");
        brief.jobs().stream().limit(JOBS_SHOWN).forEach(job -> print(out, job, known));
        out.println("\nMAY NOT BE USED ON IT");
        brief.mayNot()
                .forEach(not -> out.println("  " + not.title() + " (" + not.on() + "): " + not.why()
                        + (not.instead() == null ? "" : "; " + not.instead())));
        out.println("\nCAUTIONS");
        brief.cautions().forEach(caution -> out.println("  " + caution.title() + ": " + caution.text()));
    }

    private static void print(PrintWriter out, ThreadLine thread) {
        out.printf("  %-14s %s (%.0f %%)%n", thread.use(), thread.designation(), 100 * thread.probability());
        thread.lookAlikes().forEach(alike -> out.println("      not " + alike.screw() + ": " + alike.note()));
    }

    private static void print(PrintWriter out, QuirkLine quirk, Catalogue known) {
        out.printf(
                "%-5s %s%s  [%s, %.0f %%]%n",
                quirk.caution().word(),
                quirk.possible() ? "possible: " : "",
                quirk.title(),
                known.title(quirk.stage()),
                100 * quirk.relevance());
        out.println("      " + quirk.bites());
        out.println("      Do: " + quirk.whatToDo());
        if (quirk.possible() && quirk.settledBy() != null) {
            out.println("      Settled by a look: " + known.title(quirk.settledBy()));
        }
    }

    private static void print(PrintWriter out, Fetch fetch) {
        String place = fetch.drawer() == null ? "not in the shop" : "in " + fetch.drawer() + " “" + fetch.label() + "”";
        out.printf(
                "  %6s  %s  %s%s%n",
                fetch.onHand(), fetch.title(), place, fetch.note() == null ? "" : "  (" + fetch.note() + ")");
    }

    private static void print(PrintWriter out, PastJob job, Catalogue known) {
        out.println("  " + job.id() + "  " + job.tookIn() + "  " + known.title(job.model()) + "  " + job.kind()
                + (job.went() == null ? "" : ", went " + job.went() + ": " + job.wentNote())
                + (job.minutes() == null ? "" : ", " + job.minutes() + " min"));
    }
}
