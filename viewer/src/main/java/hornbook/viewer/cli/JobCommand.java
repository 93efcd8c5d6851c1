package hornbook.viewer.cli;

import hornbook.shared.job.JobCard;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Jobs: one subcommand a thing that is done to them. */
@Command(name = "job", header = "Takes in, clocks, notes and closes jobs.", footer = "hornbook job show j-0164")
final class JobCommand {
    private JobCommand() {}

    static CommandLine line(Frame frame) {
        return new CommandLine(new JobCommand())
                .addSubcommand(new Show(frame))
                .addSubcommand(new JobDeeds.Take(frame))
                .addSubcommand(new JobDeeds.Start(frame))
                .addSubcommand(new JobDeeds.Stop(frame))
                .addSubcommand(new JobDeeds.Find(frame))
                .addSubcommand(new JobDeeds.Pad(frame))
                .addSubcommand(new JobDeeds.Part(frame))
                .addSubcommand(new JobDeeds.Yes(frame))
                .addSubcommand(new JobDeeds.Close(frame));
    }

    /** Shows how a job stands or went. */
    @Command(
            name = "show",
            header = "Shows how a job stands or went: complaint, times, findings, what went in.",
            footer = "hornbook job show j-0164")
    static final class Show implements Callable<Integer> {
        @Parameters(paramLabel = "JOB", description = "Its number.")
        String id = "";

        private final Frame frame;

        Show(Frame frame) {
            this.frame = frame;
        }

        @Override
        public Integer call() {
            return frame.reading(workshop -> workshop.jobs()
                    .job(id)
                    .map(card -> frame.answer(card, out -> print(out, card)))
                    .orElseGet(() -> frame.notThere("job", id)));
        }
    }

    private static void print(PrintWriter out, JobCard job) {
        out.println(job.id() + "  " + job.kind() + ", " + job.status() + "  " + job.horn() + " (" + job.model() + ")");
        out.println("  took in " + job.tookIn() + ": " + job.complaint());
        String quoted = job.quotedMin() == null ? "" : " of " + job.quotedMin() + " quoted";
        out.println("  " + job.minutes() + " minutes" + quoted + (job.done() == null ? "" : ", done " + job.done()));
        if (job.went() != null) {
            out.println("  went " + job.went() + ": " + job.wentNote());
        }
        if (!job.quirksMet().isEmpty()) {
            out.println("  met: " + String.join(", ", job.quirksMet()));
        }
        if (!job.note().isBlank()) {
            out.println("  note: " + job.note());
        }
        job.tasks()
                .forEach(t ->
                        out.printf("  %4d min  %s%s%n", t.minutes(), t.task(), t.count() > 1 ? " x" + t.count() : ""));
        job.findings()
                .forEach(f -> out.printf("  %s %s %s%s  %s%n", f.what(), f.where(), f.value(), f.unit(), f.note()));
        job.parts().forEach(p -> out.printf("  %d x %s (%s)  %s%n", p.qty(), p.title(), p.lot(), p.whatFor()));
        job.pads().forEach(p -> out.printf("  pad %s mm in %s%n", p.sizeMm().toPlainString(), p.cup()));
    }
}
