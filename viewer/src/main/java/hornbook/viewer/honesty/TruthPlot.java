package hornbook.viewer.honesty;

import hornbook.catalogue.estimate.HonestyAnswer.JobLine;
import hornbook.viewer.widget.Plot;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Rectangle;

/**
 * Each job by the day it came in: what it took against its P50, from half to twice as long. A round dot stayed within P80,
 * a square ran over it.
 */
final class TruthPlot extends Plot {
    private static final double TALL = 190;
    private static final double DOT = 3;

    private final List<JobLine> jobs;

    TruthPlot(List<JobLine> jobs) {
        super(TALL);
        this.jobs = jobs;
        setId("truth-plot");
        long over = jobs.stream().filter(TruthPlot::over).count();
        setAccessibleText(
                "What each of %d jobs took against its estimate; %d ran over P80".formatted(jobs.size(), over));
    }

    private static boolean over(JobLine job) {
        return job.tookMin() > job.p80Min();
    }

    @Override
    protected void draw() {
        line(0, 0, 1, 0, "plot-foot");
        line(0, part(1), 1, part(1), "plot-honest");
        scale(part(0.5), "half");
        scale(part(1), "as said");
        scale(part(2), "twice");
        if (jobs.isEmpty()) {
            return;
        }
        LocalDate first = jobs.getFirst().tookIn();
        double days = Math.max(1, ChronoUnit.DAYS.between(first, jobs.getLast().tookIn()));
        for (JobLine job : jobs) {
            double x = x(ChronoUnit.DAYS.between(first, job.tookIn()) / days);
            double y = y(part((double) job.tookMin() / Math.max(1, job.p50Min())));
            if (over(job)) {
                add(new Rectangle(x - DOT, y - DOT, 2 * DOT, 2 * DOT), "plot-over");
            } else {
                add(new Circle(x, y, DOT), "plot-within");
            }
        }
        for (int year = first.getYear() + 1; year <= jobs.getLast().tookIn().getYear(); year++) {
            under(ChronoUnit.DAYS.between(first, LocalDate.of(year, 1, 1)) / days, String.valueOf(year));
        }
    }

    /** Half as long lies at the foot, twice as long at the top; what is further off lies on the edge. */
    private static double part(double ratio) {
        double halvings = Math.log(ratio) / Math.log(2);
        return 0.5 + 0.5 * Math.clamp(halvings, -1, 1);
    }
}
