package hornbook.viewer.cli;

import hornbook.indexer.brief.BriefAnswer;
import hornbook.indexer.brief.BriefQuestion;
import hornbook.indexer.brief.Fetch;
import hornbook.indexer.brief.PastJob;
import hornbook.indexer.brief.QuirkLine;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
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

    @Option(names = "--reserve", description = "Offer what is set aside, too.")
    boolean reserve;

    private final Frame frame;

    BriefCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        return frame.reading(workshop -> {
            BriefAnswer brief = workshop.brief().answer(new BriefQuestion(see.question(workshop), reserve));
            return frame.answer(brief, out -> print(out, brief));
        });
    }

    private static void print(PrintWriter out, BriefAnswer brief) {
        out.println(brief.says());
        brief.stops().forEach(stop -> out.println("STOP  " + stop));
        out.println();
        brief.quirks().forEach(quirk -> print(out, quirk));
        out.println("\nFETCH");
        brief.fetch().forEach(fetch -> print(out, fetch));
        out.println("\nTHREADS");
        brief.threads()
                .forEach(t -> out.printf("  %-14s %s (%.0f %%)%n", t.use(), t.designation(), 100 * t.probability()));
        if (!brief.takingDown().isEmpty()) {
            out.println("\nTAKING DOWN" + (brief.takingDownOf() == null ? "" : " (from " + brief.takingDownOf() + ")"));
            brief.takingDown()
                    .forEach(step -> out.println("  " + step.step() + ". " + step.piece() + ": " + step.how()
                            + (step.reason() == null ? "" : " (" + step.reason() + ")")));
        }
        out.println("\nPAST JOBS");
        brief.jobs().stream().limit(JOBS_SHOWN).forEach(job -> print(out, job));
        out.println("\nMAY NOT BE USED ON IT");
        brief.mayNot()
                .forEach(not -> out.println("  " + not.title() + " (" + not.on() + "): " + not.why()
                        + (not.instead() == null ? "" : "; " + not.instead())));
        out.println("\nCAUTIONS");
        brief.cautions().forEach(caution -> out.println("  " + caution.title() + ": " + caution.text()));
    }

    private static void print(PrintWriter out, QuirkLine quirk) {
        out.printf(
                "%-5s %s%s  [%s, %.0f %%]%n",
                quirk.caution().word(),
                quirk.possible() ? "possible: " : "",
                quirk.title(),
                quirk.stage(),
                100 * quirk.relevance());
        out.println("      " + quirk.bites());
        out.println("      Do: " + quirk.whatToDo());
        if (quirk.possible() && quirk.settledBy() != null) {
            out.println("      Settled by looking at " + quirk.settledBy());
        }
    }

    private static void print(PrintWriter out, Fetch fetch) {
        String place = fetch.drawer() == null ? "not in the shop" : fetch.drawer() + " “" + fetch.label() + "”";
        out.printf(
                "  %6s  %s  in %s%s%n",
                fetch.onHand(), fetch.title(), place, fetch.note() == null ? "" : "  (" + fetch.note() + ")");
    }

    private static void print(PrintWriter out, PastJob job) {
        out.println("  " + job.id() + "  " + job.tookIn() + "  " + job.model() + "  " + job.kind()
                + (job.went() == null ? "" : ", went " + job.went() + ": " + job.wentNote())
                + (job.minutes() == null ? "" : ", " + job.minutes() + " min"));
    }
}
