package hornbook.viewer.cli;

import hornbook.catalogue.pack.Difference;
import hornbook.catalogue.pack.Difference.What;
import hornbook.catalogue.pack.Made;
import hornbook.catalogue.pack.Taken;
import hornbook.shared.shop.Counted;
import hornbook.viewer.workshop.Workshop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Knowledge from shop to shop. */
@Command(
        name = "pack",
        header = "Gives the shop's own knowledge to another shop, and takes theirs: entries only, never customers.",
        footer = "hornbook pack make ours.zip")
final class PackCommand {
    private PackCommand() {}

    static CommandLine line(Frame frame) {
        return Verbs.of(new PackCommand(), new Make(frame), new Take(frame));
    }

    /** Ours, for others. */
    @Command(
            name = "make",
            header = "Writes the shop's own entries into a file for another shop.",
            footer = "hornbook pack make ours.zip")
    static final class Make implements Callable<Integer> {
        @Parameters(paramLabel = "FILE", description = "The pack to write, a zip file.")
        Path file = Path.of("");

        private final Frame frame;

        Make(Frame frame) {
            this.frame = frame;
        }

        @Override
        public Integer call() {
            return frame.reading(workshop -> {
                Made made = workshop.packs()
                        .make(frame.around().here().resolve(file).normalize());
                return frame.answer(made, out -> {
                    out.println(made.file() + "  " + Counted.of(made.entries().size(), "entry"));
                    made.leftOut().forEach(left -> out.println("! " + left.entry() + " " + left.why()));
                });
            });
        }
    }

    /** Theirs. */
    @Command(
            name = "take",
            header = "Takes the entries of another shop's pack, all or none, as one deed; a dry run says what differs.",
            footer = "hornbook pack take shop-pack.zip --dry-run")
    static final class Take implements Callable<Integer> {
        @Parameters(paramLabel = "FILE", description = "Their pack.")
        Path file = Path.of("");

        @Option(names = "--dry-run", description = "Say what would be done, and do nothing.")
        boolean dryRun;

        @Option(names = "--over", description = "Where theirs differ from our own, take theirs.")
        boolean over;

        private final Frame frame;

        Take(Frame frame) {
            this.frame = frame;
        }

        @Override
        public Integer call() {
            return dryRun ? frame.reading(this::take) : frame.writing(this::take);
        }

        private int take(Workshop workshop) {
            Taken taken =
                    workshop.packs().take(frame.around().here().resolve(file).normalize(), over, dryRun);
            return frame.answer(taken, out -> print(out, taken));
        }

        private static void print(PrintWriter out, Taken taken) {
            taken.entries().forEach(entry -> print(out, entry));
            taken.remarks().forEach(remark -> out.println("! " + remark));
            if (taken.deed() == null) {
                out.println("nothing was changed");
            } else {
                OneDeed.line(out, taken.deed());
            }
        }

        private static void print(PrintWriter out, Difference entry) {
            out.printf("%-8s %s  %s%n", entry.what().word(), entry.id(), entry.title());
            if (entry.what() != What.NEW) {
                entry.fields()
                        .forEach(field -> out.println(
                                "         " + field.field() + ": here " + field.here() + ", theirs " + field.theirs()));
            }
        }
    }
}
