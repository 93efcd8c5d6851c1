package hornbook.viewer.cli;

import hornbook.shared.job.JobCard;
import hornbook.shared.job.Standing;
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
                .addSubcommand(new JobList(frame))
                .addSubcommand(new JobDeeds.Take(frame))
                .addSubcommand(new JobDeeds.Start(frame))
                .addSubcommand(new JobDeeds.Stop(frame))
                .addSubcommand(new JobNotes.Told(frame))
                .addSubcommand(new JobDeeds.Find(frame))
                .addSubcommand(new JobNotes.Key(frame))
                .addSubcommand(new JobDeeds.Pad(frame))
                .addSubcommand(new JobDeeds.Part(frame))
                .addSubcommand(new JobDeeds.Yes(frame))
                .addSubcommand(new JobNotes.Photo(frame))
                .addSubcommand(new JobNotes.Soak(frame))
                .addSubcommand(new JobNotes.Soaked(frame))
                .addSubcommand(new JobNotes.Where(frame))
                .addSubcommand(new JobNotes.TookDown(frame))
                .addSubcommand(new JobNotes.Met(frame))
                .addSubcommand(new JobEnds.Change(frame))
                .addSubcommand(new JobDeeds.Close(frame))
                .addSubcommand(new JobEnds.Teach(frame))
                .addSubcommand(new JobSheet(frame))
                .addSubcommand(new JobEnds.HandBack(frame))
                .addSubcommand(new JobEnds.FollowUp(frame));
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
        job.consents().forEach(c -> out.printf("  yes to %s, said by %s, %s%n", c.what(), c.saidBy(), c.day()));
        job.takenDown().forEach(d -> out.printf("  down %d: %s  %s%n", d.step(), d.piece(), d.how()));
        job.photos().forEach(p -> out.printf("  photo %s  %s%n", p.file(), p.word()));
        printStanding(out, job.standing());
    }

    static void printStanding(PrintWriter out, Standing standing) {
        standing.clocks()
                .forEach(c -> out.printf(
                        "  clock runs: %s since %s, %s%s%n",
                        c.task(), c.since(), c.who(), c.forgotten() ? " (forgotten? stop it with --minutes)" : ""));
        standing.pieces()
                .forEach(p -> out.printf(
                        "  %s: %s%s%n",
                        p.piece(), p.where(), p.waitsFor().isBlank() ? "" : ", waits for " + p.waitsFor()));
        standing.timers().forEach(t -> out.printf("  %s  %s, ready %s%n", t.id(), t.what(), t.ready()));
    }
}
