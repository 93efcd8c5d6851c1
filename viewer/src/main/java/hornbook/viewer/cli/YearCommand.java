package hornbook.viewer.cli;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.estimate.HonestyAnswer;
import hornbook.shared.shop.Counted;
import hornbook.shared.year.YearAnswer;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.year.YearPaper;
import hornbook.viewer.paper.year.YearSheet;
import hornbook.viewer.workshop.Workshop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** How was the year? */
@Command(
        name = "year",
        header = "The year in the shop: what came in, hours, what was used, late and overrun jobs, slow suppliers.",
        footer = "hornbook year")
final class YearCommand implements Callable<Integer> {
    private static final int SHOWN = 6;
    private static final double MINUTES = 60;

    @Parameters(arity = "0..1", paramLabel = "YEAR", description = "As 2026; this year if left out.")
    @Nullable
    Integer year;

    @Option(names = "--csv", paramLabel = "FILE", description = "Write every figure as a row of a CSV file.")
    @Nullable
    Path csv;

    @Option(names = "--pdf", paramLabel = "FILE", description = "Print it with its plots.")
    @Nullable
    Path pdf;

    @Option(names = "--paper", paramLabel = "a4|letter", defaultValue = "a4", description = "The sheet; else a4.")
    String paper = "";

    private final Frame frame;

    YearCommand(Frame frame) {
        this.frame = frame;
    }

    /** What is printed as JSON: the books' year, and how honest the estimates were up to its end. */
    record Page(YearAnswer books, HonestyAnswer estimates) {}

    @Override
    public Integer call() {
        return frame.reading(workshop -> {
            PaperSize size = PaperSize.named(paper);
            YearAnswer books =
                    year == null ? workshop.year().answer() : workshop.year().answer(year);
            if (books.empty()) {
                return frame.nothing(books, out -> out.println("the books say nothing of " + books.year()));
            }
            Page page = new Page(books, workshop.honesty().answer().until(books.upTo()));
            files(workshop, page, size);
            return frame.answer(page, out -> print(out, page, workshop));
        });
    }

    private void files(Workshop workshop, Page page, PaperSize size) {
        if (csv != null) {
            YearSheet.write(
                    page.books(),
                    page.estimates(),
                    frame.around().here().resolve(csv).normalize());
        }
        if (pdf != null) {
            YearPaper.Printed printed = new YearPaper(workshop.catalogue(), size)
                    .print(
                            workshop.name(),
                            page.books(),
                            page.estimates(),
                            frame.around().here().resolve(pdf).normalize());
            frame.say(printed.file() + "  " + Counted.of(printed.pages(), "page"));
        }
    }

    private static void print(PrintWriter out, Page page, Workshop workshop) {
        YearAnswer books = page.books();
        Catalogue catalogue = workshop.catalogue();
        out.printf(
                "%d in %s: %s came in, %d handed back, %.0f h clocked%n",
                books.year(),
                workshop.name(),
                Counted.of(books.cameIn(), "job"),
                books.done(),
                books.minutes() / MINUTES);
        out.println("month   in  back  hours  pieces    spent");
        books.months()
                .forEach(m -> out.printf(
                        "   %2d  %3d  %4d  %5.0f  %6d  %7s%n",
                        m.month(),
                        m.cameIn(),
                        m.done(),
                        m.minutes() / MINUTES,
                        m.pieces(),
                        m.spent().toPlainString()));
        out.println("hours by kind of job");
        books.kinds()
                .forEach(k -> out.printf(
                        "  %5.0f h  %s, %s%n", k.minutes() / MINUTES, k.kind(), Counted.of(k.done(), "job")));
        out.println("hours by task");
        books.tasks().stream()
                .limit(SHOWN)
                .forEach(t -> out.printf(
                        "  %5.0f h  %s, %s%n",
                        t.minutes() / MINUTES, title(catalogue, t.task()), Counted.of(t.jobs(), "job")));
        out.println("used for " + books.usedCost().toPlainString() + "; deliveries for "
                + books.spent().toPlainString());
        books.used().stream()
                .limit(SHOWN)
                .forEach(u -> out.printf(
                        "  %8s  %4d  %s%n",
                        u.cost() == null ? "" : u.cost().toPlainString(), u.pieces(), title(catalogue, u.item())));
        printPromises(out, books);
        books.suppliers()
                .forEach(s -> out.println("  " + s.name()
                        + (s.typicalDays() == null
                                ? ": days not written down"
                                : ": " + s.typicalDays() + " days as a rule, " + s.slowest() + " at worst, "
                                        + s.deliveries() + " deliveries")
                        + (s.jobsWaited() == 0 ? "" : ", a job waited for " + s.jobsWaited())));
        out.println("estimates, as they would have been up to then");
        page.estimates().remarks().forEach(remark -> out.println("  " + remark));
        books.remarks().forEach(remark -> out.println("! " + remark));
    }

    private static void printPromises(PrintWriter out, YearAnswer books) {
        out.println("late: " + books.late().size() + "; of " + books.promised() + " promised and handed back");
        books.late().stream()
                .limit(SHOWN)
                .forEach(l -> out.println("  " + l.job() + "  " + l.kind() + ", " + Counted.of(l.days(), "day")
                        + (l.done() == null ? ", still here" : "")));
        out.println("over the quote by more than a fifth: " + books.overrun().size() + " of " + books.quoted());
        books.overrun().stream()
                .limit(SHOWN)
                .forEach(o -> out.println("  " + o.job() + "  " + o.kind() + ", quoted " + o.quotedMin() + " min, took "
                        + o.tookMin() + " (+" + o.overPercent() + " %)"));
        out.println("suppliers, slowest first");
    }

    private static String title(Catalogue catalogue, String id) {
        return catalogue.entry(id).map(Entry::title).orElse(id);
    }
}
