package hornbook.viewer.cli;

import hornbook.catalogue.called.JobWords;
import hornbook.shared.job.JobCard;
import hornbook.shared.job.Standing;
import hornbook.shared.shop.Counted;
import hornbook.viewer.workshop.Workshop;
import java.io.PrintWriter;
import java.util.stream.Collectors;

/** A job in words: how it stands or went. */
final class JobText {
    private final JobWords words;

    JobText(Workshop workshop) {
        words = new JobWords(workshop.catalogue());
    }

    String title(String id) {
        return words.title(id);
    }

    void sheet(PrintWriter out, JobCard job) {
        out.println(job.id() + "  " + job.kind() + ", " + job.status() + "  " + words.title(job.model()) + "  "
                + job.horn());
        out.println("  took in " + job.tookIn() + ": " + job.complaint());
        String quoted = job.quotedMin() == null ? "" : " of " + job.quotedMin() + " quoted";
        out.println("  " + Counted.of(job.minutes(), "minute") + quoted
                + (job.done() == null ? "" : ", done " + job.done()));
        if (job.went() != null) {
            out.println("  went " + job.went() + ": " + job.wentNote());
        }
        if (!job.quirksMet().isEmpty()) {
            out.println("  met: " + job.quirksMet().stream().map(words::title).collect(Collectors.joining("; ")));
        }
        if (!job.note().isBlank()) {
            out.println("  note: " + job.note());
        }
        job.planned()
                .forEach(p ->
                        out.println("  planned   " + words.title(p.task()) + (p.count() > 1 ? " x" + p.count() : "")));
        job.tasks().forEach(t -> out.println("  " + words.time(t)));
        job.findings().forEach(f -> out.println("  " + words.finding(f)));
        job.parts().forEach(p -> out.printf("  %d x %s (%s)  %s%n", p.qty(), p.title(), p.lot(), p.whatFor()));
        job.pads().forEach(p -> out.printf("  pad %s mm in %s%n", p.sizeMm().toPlainString(), words.title(p.cup())));
        job.consents().forEach(c -> out.printf("  yes to %s, said by %s, %s%n", c.what(), c.saidBy(), c.day()));
        job.takenDown().forEach(d -> out.printf("  down %d: %s  %s%n", d.step(), d.piece(), d.how()));
        job.photos().forEach(p -> out.printf("  photo %s  %s%n", p.file(), p.word()));
        standing(out, job.standing());
    }

    /** What a deed left behind, in a line. */
    void after(PrintWriter out, JobCard job) {
        out.println(
                job.id() + "  " + job.kind() + ", " + job.status() + "  " + job.horn() + "  " + job.minutes() + " min");
    }

    void standing(PrintWriter out, Standing standing) {
        standing.clocks()
                .forEach(c -> out.printf(
                        "  clock runs: %s since %s, %s%s%n",
                        words.title(c.task()),
                        c.since(),
                        c.who(),
                        c.forgotten() ? " (forgotten? stop it with --minutes)" : ""));
        standing.pieces()
                .forEach(p -> out.printf(
                        "  %s: %s%s%n",
                        p.piece(), p.where(), p.waitsFor().isBlank() ? "" : ", waits for " + p.waitsFor()));
        standing.timers().forEach(t -> out.printf("  %s  %s, ready %s%n", t.id(), t.what(), t.ready()));
    }
}
