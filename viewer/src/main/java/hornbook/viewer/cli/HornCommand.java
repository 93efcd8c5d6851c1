package hornbook.viewer.cli;

import hornbook.catalogue.called.JobWords;
import hornbook.shared.job.HornCard;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Horns: one subcommand a thing that is done to them. */
@Command(name = "horn", header = "Shows horns, and writes down what they are.", footer = "hornbook horn show h-194")
final class HornCommand {
    private HornCommand() {}

    static CommandLine line(Frame frame) {
        return Verbs.of(
                new HornCommand(),
                new Show(frame),
                new HornMapCommand(frame),
                new HornDeeds.Confirm(frame),
                new HornDeeds.NewEntry(frame));
    }

    /** Shows a horn and its jobs. */
    @Command(
            name = "show",
            header = "Shows a horn: what it is, how sure that is, and its jobs.",
            footer = "hornbook horn show h-194")
    static final class Show implements Callable<Integer> {
        @Parameters(paramLabel = "HORN", description = "Its number.")
        String id = "";

        private final Frame frame;

        Show(Frame frame) {
            this.frame = frame;
        }

        @Override
        public Integer call() {
            return frame.reading(shop -> shop.jobs()
                    .horn(id)
                    .map(horn -> frame.answer(horn, out -> print(out, horn, new JobWords(shop.catalogue()))))
                    .orElseGet(() -> frame.notThere("horn", id)));
        }
    }

    private static void print(PrintWriter out, HornCard horn, JobWords words) {
        out.println(horn.id() + "  " + words.title(horn.model()) + "  " + horn.instrument() + "  serial "
                + (horn.serial().isBlank() ? "none" : horn.serial()));
        String sold = horn.soldAs() == null ? "" : "sold as " + words.title(horn.soldAs()) + ", ";
        String year = horn.yearAbout() == null ? "" : "about " + horn.yearAbout() + ", ";
        out.println("  " + sold + year + horn.sureness() + " (by " + horn.identifiedBy() + ")");
        if (!horn.note().isBlank()) {
            out.println("  note: " + horn.note());
        }
        horn.jobs()
                .forEach(j -> out.printf(
                        "  %s  %s  %s, %s%s  %s%n",
                        j.id(),
                        j.tookIn(),
                        j.kind(),
                        j.status(),
                        j.went() == null ? "" : ", went " + j.went(),
                        j.complaint()));
    }
}
