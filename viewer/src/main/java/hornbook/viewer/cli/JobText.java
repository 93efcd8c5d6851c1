package hornbook.viewer.cli;

import hornbook.shared.job.JobCard;
import hornbook.shared.job.Standing;
import java.io.PrintWriter;

/** A job in words: how it stands or went. */
final class JobText {
    private JobText() {}

    static void sheet(PrintWriter out, JobCard job) {
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
        standing(out, job.standing());
    }

    /** What a deed left behind, in a line. */
    static void after(PrintWriter out, JobCard job) {
        out.println(
                job.id() + "  " + job.kind() + ", " + job.status() + "  " + job.horn() + "  " + job.minutes() + " min");
    }

    static void standing(PrintWriter out, Standing standing) {
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
