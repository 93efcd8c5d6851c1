package hornbook.viewer.figures;

import hornbook.catalogue.estimate.Estimate;
import hornbook.catalogue.estimate.EstimateAnswer;
import hornbook.catalogue.estimate.EstimateQuestion;
import hornbook.catalogue.estimate.EstimateQuestion.TaskCount;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.JobStatus;
import hornbook.shared.shop.TaskTime;
import hornbook.shared.store.Access;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Estimates each closed job of the demo from the jobs before it, and counts how often it took longer than said. */
public final class EstimatesReplayed {
    private EstimatesReplayed() {}

    public static void main(String[] args) throws Exception {
        Path folder = Files.createTempDirectory("replay").resolve("demo");
        List<Job> jobs;
        Map<String, Horn> horns = new LinkedHashMap<>();
        Map<String, List<TaskTime>> clocks = new LinkedHashMap<>();
        try (Workshop demo = DemoShop.in(folder)) {
            jobs = demo.books().all(Job.class).stream()
                    .filter(job -> job.status() == JobStatus.DONE)
                    .toList();
            demo.books().all(Horn.class).forEach(horn -> horns.put(horn.id(), horn));
            demo.books()
                    .all(TaskTime.class)
                    .forEach(t -> clocks.computeIfAbsent(t.job(), j -> new ArrayList<>())
                            .add(t));
        }
        int skip = args.length > 0 ? Integer.parseInt(args[0]) : 40;
        int n = 0;
        int under50 = 0;
        int under80 = 0;
        double error = 0;
        double bookError = 0;
        for (Job job : jobs.subList(skip, jobs.size())) {
            LocalDate before = job.tookIn().minusDays(1);
            try (Workshop then = Workshop.open(folder, Access.READ, Optional.of(before))) {
                Horn horn = horns.get(job.horn());
                Map<String, Integer> counts = new LinkedHashMap<>();
                int took = 0;
                for (TaskTime t : clocks.getOrDefault(job.id(), List.of())) {
                    counts.merge(t.task(), t.count(), Math::max);
                    took += t.minutes();
                }
                List<TaskCount> tasks = counts.entrySet().stream()
                        .map(e -> new TaskCount(e.getKey(), e.getValue()))
                        .toList();
                if (tasks.isEmpty()) {
                    continue;
                }
                String model = horn.model().equals("unlisted") ? null : horn.model();
                EstimateAnswer said = new Estimate(then.books(), then.catalogue())
                        .estimate(new EstimateQuestion(tasks, model, horn.instrument(), null));
                n++;
                under50 += took <= said.p50Min() ? 1 : 0;
                under80 += took <= said.p80Min() ? 1 : 0;
                error += Math.abs(Math.log((double) took / said.p50Min()));
                bookError += Math.abs(Math.log((double) took / said.bookMin()));
            }
        }
        System.out.printf(
                "%d jobs from the %dth on: at or under P50 %.1f %%, at or under P80 %.1f %%; mean |ln error| %.3f, the book's %.3f%n",
                n, skip + 1, 100.0 * under50 / n, 100.0 * under80 / n, error / n, bookError / n);
    }
}
