package hornbook.viewer.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows how a job stands or went. */
@Command(
        name = "show",
        header = "Shows how a job stands or went: complaint, times, findings, what went in.",
        footer = "hornbook job show j-0164")
final class JobShow implements Callable<Integer> {
    @Parameters(paramLabel = "JOB", description = "Its number.")
    String id = "";

    private final Frame frame;

    JobShow(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        return frame.reading(shop -> shop.jobs()
                .job(id)
                .map(job -> frame.answer(job, out -> new JobText(shop).sheet(out, job)))
                .orElseGet(() -> frame.notThere("job", id)));
    }
}
