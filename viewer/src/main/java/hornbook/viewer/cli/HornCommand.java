package hornbook.viewer.cli;

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
            return frame.showing("horn", id, shop -> shop.jobs().horn(id), HornCommand::print);
        }
    }

    private static void print(PrintWriter out, HornCard horn) {
        out.println(horn.id() + "  " + horn.model() + "  " + horn.instrument() + "  serial "
                + (horn.serial().isBlank() ? "none" : horn.serial()));
        String sold = horn.soldAs() == null ? "" : "sold as " + horn.soldAs() + ", ";
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
