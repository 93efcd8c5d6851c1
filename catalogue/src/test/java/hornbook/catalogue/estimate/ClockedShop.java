package hornbook.catalogue.estimate;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Task;
import hornbook.catalogue.estimate.EstimateQuestion.TaskCount;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * A shop drawn with known effects: minutes = book x count x exp(task + instrument + make + model + who + job + rest), each
 * effect normal. How far each sort of effect spreads is drawn for the shop, so that no shop is like the program's start.
 *
 * @param past what the clocks said so far
 * @param coming jobs to estimate, with what they then took
 */
record ClockedShop(List<Clocked> past, List<Coming> coming) {
    private static final int MAKES = 6;
    private static final int MODELS = 3;
    private static final List<String> INSTRUMENTS = List.of("alto", "alto", "alto", "tenor", "tenor", "soprano");
    private static final List<String> WHO = List.of("A.A.", "A.A.", "A.A.", "B.B.");
    /** Usual spreads of task, instrument, make, model, who, job. */
    private static final double[] USUAL = {0.15, 0.08, 0.20, 0.12, 0.10, 0.15};

    /** A job to come, and the minutes it will take. */
    record Coming(EstimateQuestion question, double minutes) {}

    /** The shipped entries with the makes' models that the shops have. */
    static Catalogue catalogue() {
        List<Model> models = new ArrayList<>();
        for (int make = 0; make < MAKES; make++) {
            for (int model = 0; model < MODELS; model++) {
                models.add(model("m-" + make + "-" + model, "k-" + make));
            }
        }
        return Catalogue.shipped().with(models);
    }

    static ClockedShop draw(SplittableRandom random, Catalogue catalogue, int past, int coming) {
        return new Drawing(random, catalogue).shop(past, coming);
    }

    private static final class Drawing {
        private final SplittableRandom random;
        private final List<Task> tasks;
        private final double[] spread = new double[USUAL.length];
        private final double rest;
        private final Map<String, Double> effects = new HashMap<>();

        Drawing(SplittableRandom random, Catalogue catalogue) {
            this.random = random;
            this.tasks = catalogue.tasks().values().stream()
                    .filter(t ->
                            INSTRUMENTS.stream().allMatch(i -> t.medianMinutes().containsKey(i)))
                    .toList();
            for (int k = 0; k < spread.length; k++) {
                spread[k] = USUAL[k] * (0.3 + 1.4 * random.nextDouble());
            }
            this.rest = 0.7 + 0.6 * random.nextDouble();
        }

        ClockedShop shop(int past, int coming) {
            List<Clocked> clocks = new ArrayList<>();
            for (int j = 0; j < past; j++) {
                clocks.addAll(job("j-" + j));
            }
            List<Coming> jobs = new ArrayList<>();
            for (int j = 0; j < coming; j++) {
                jobs.add(asked(job("next-" + j)));
            }
            return new ClockedShop(clocks, jobs);
        }

        private static Coming asked(List<Clocked> job) {
            Clocked one = job.getFirst();
            List<TaskCount> tasks =
                    job.stream().map(c -> new TaskCount(c.task(), c.count())).toList();
            return new Coming(
                    new EstimateQuestion(tasks, one.model(), one.instrument(), one.who()),
                    job.stream().mapToInt(Clocked::minutes).sum());
        }

        /** Makes that are seen often and makes that are hardly ever seen, as in any shop. */
        private List<Clocked> job(String id) {
            int make = Math.min(random.nextInt(MAKES), random.nextInt(MAKES));
            String model = "m-" + make + "-" + Math.min(random.nextInt(MODELS), random.nextInt(MODELS));
            String instrument = INSTRUMENTS.get(random.nextInt(INSTRUMENTS.size()));
            String who = WHO.get(random.nextInt(WHO.size()));
            double slow = effect(1, instrument)
                    + effect(2, "k-" + make)
                    + effect(3, model)
                    + effect(4, who)
                    + spread[5] * random.nextGaussian();
            List<Clocked> clocks = new ArrayList<>();
            int n = 3 + random.nextInt(9);
            int from = random.nextInt(tasks.size());
            for (int t = 0; t < n; t++) {
                Task task = tasks.get((from + t * 7) % tasks.size());
                int count = task.unit().equals("per job") ? 1 : 1 + random.nextInt(12);
                double book = task.medianMinutes().getOrDefault(instrument, 1.0) * count;
                double log = slow + effect(0, task.id()) + task.sigma() * rest * random.nextGaussian();
                int minutes = (int) Math.max(1, Math.round(book * Math.exp(log)));
                clocks.add(new Clocked(id, task.id(), instrument, "k-" + make, model, who, count, minutes));
            }
            return clocks;
        }

        private double effect(int kind, String of) {
            return effects.computeIfAbsent(kind + of, o -> spread[kind] * random.nextGaussian());
        }
    }

    private static Model model(String id, String make) {
        return new Model(
                id,
                make,
                id,
                id,
                List.of("alto"),
                null,
                List.of(),
                List.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                List.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                List.of(),
                null,
                1,
                List.of(),
                List.of(),
                "invented for a trial",
                "drawn");
    }
}
