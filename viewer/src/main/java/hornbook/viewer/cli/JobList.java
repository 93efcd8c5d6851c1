package hornbook.viewer.cli;

import hornbook.shared.job.AfterCare;
import hornbook.shared.job.OnBench;
import hornbook.viewer.workshop.Workshop;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** What is on the bench. */
@Command(
        name = "list",
        header = "Lists the jobs on the bench: clock, what they wait for, the day promised.",
        footer = "hornbook job list")
final class JobList implements Callable<Integer> {
    private final Frame frame;

    JobList(Frame frame) {
        this.frame = frame;
    }

    /** The answer: jobs not handed back, and those whose horn should come by to be looked at. */
    record Bench(List<OnBench> jobs, List<AfterCare.Due> followUps) {}

    @Override
    public Integer call() {
        return frame.reading(workshop -> {
            Bench bench =
                    new Bench(workshop.jobs().onBench(), workshop.afterCare().due());
            return bench.jobs().isEmpty() && bench.followUps().isEmpty()
                    ? frame.nothing(bench, out -> out.println("Nothing is on the bench."))
                    : frame.answer(bench, out -> print(out, bench, workshop));
        });
    }

    private static void print(PrintWriter out, Bench bench, Workshop workshop) {
        JobText text = new JobText(workshop);
        for (OnBench job : bench.jobs()) {
            String promised = job.promised() == null ? "" : ", promised " + job.promised();
            out.println(job.id() + "  " + job.kind() + ", " + job.status() + promised + "  " + text.title(job.model())
                    + "  " + job.horn());
            out.println("  " + job.complaint());
            text.standing(out, job.standing());
        }
        bench.followUps()
                .forEach(due -> out.println(
                        due.job() + "  done " + due.done() + ": have " + due.horn() + " come by until " + due.until()));
    }
}
