package hornbook.viewer.cli;

import hornbook.catalogue.called.JobWords;
import hornbook.shared.exchange.Refusal;
import hornbook.shared.measure.SizeReader;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.pads.Assignment;
import hornbook.shared.pads.CupSheet;
import hornbook.shared.pads.PadAnswer;
import hornbook.shared.pads.Pads;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Counted;
import hornbook.viewer.workshop.Workshop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Which pad goes into which cup? */
@Command(
        name = "pads",
        header = "Which pads go where over all measured horns, what is short, and what it strands.",
        footer = "hornbook pads --job j-0240 --job j-0241")
final class PadsCommand implements Callable<Integer> {
    @Option(names = "--job", arity = "1..*", paramLabel = "JOB", description = "Jobs whose cups were measured.")
    List<String> jobs = List.of();

    @Option(names = "--cups", paramLabel = "FILE", description = "Cups in a CSV file: cup,diameter[,job][,thickness].")
    @Nullable
    Path cups;

    @Option(names = "--reserve", description = "Take from the reserve, too.")
    boolean reserve;

    private final Frame frame;

    PadsCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        if (jobs.isEmpty() == (cups == null)) {
            throw new BadInput("say which cups: --job j-0240 for measured ones, or --cups FILE.csv");
        }
        return frame.reading(workshop -> {
            PadAnswer answer = asked(workshop);
            return frame.answer(answer, out -> print(out, answer, new JobWords(workshop.catalogue())));
        });
    }

    private PadAnswer asked(Workshop workshop) {
        SizeReader sizes = StandardSizes.load().reader();
        Pads pads = new Pads(workshop.books(), sizes);
        if (cups == null) {
            return pads.forJobs(jobs, reserve);
        }
        CupSheet sheet = CupSheet.read(frame.around().here().resolve(cups).normalize(), sizes);
        if (!sheet.refused().isEmpty()) {
            Refusal first = sheet.refused().getFirst();
            int more = sheet.refused().size() - 1;
            throw new BadInput((first.row() == 0 ? "" : first.file() + ", ")
                    + first.at()
                    + (first.field() == null ? "" : ", " + first.field())
                    + ": " + first.why()
                    + (more == 0 || first.row() == 0 ? "" : "; rows bad besides: " + more));
        }
        return pads.forCups(sheet.cups(), reserve);
    }

    private static void print(PrintWriter out, PadAnswer answer, JobWords words) {
        answer.assignments().forEach(a -> print(out, a, words));
        answer.shortages()
                .forEach(s -> out.println("short: " + s.size().toPlainString() + " mm for " + words.title(s.cup())
                        + (s.job() == null ? "" : " of " + s.job()) + ": " + s.why()));
        out.println(Counted.of(answer.assignments().size(), "cup") + " served, " + answer.halfSteps()
                + " a half step off, " + answer.shortages().size() + " short, cost " + answer.cost());
        answer.stranded().forEach(line -> out.println("! " + line));
        answer.remarks().forEach(line -> out.println("! " + line));
    }

    private static void print(PrintWriter out, Assignment a, JobWords words) {
        String job = a.job() == null ? "" : a.job() + "  ";
        String off = a.halfSteps() == 0 ? "" : "  (ruled " + a.ruled().toPlainString() + ")";
        out.printf(
                "  %s%-14s %5s mm  %5s  %s in %s%s%n",
                job,
                words.title(a.cup()),
                a.diameter().toPlainString(),
                a.size().toPlainString(),
                a.lot(),
                a.drawer(),
                off);
    }
}
