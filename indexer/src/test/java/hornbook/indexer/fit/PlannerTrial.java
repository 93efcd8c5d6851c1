package hornbook.indexer.fit;

import hornbook.shared.measure.StandardSizes;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The planner against an exhaustive search on random sets of operations. {@code --n 10000 --seed 7}. */
final class PlannerTrial {
    private static final Threads THREADS = new Threads(StandardSizes.load().reader());

    int feasible;
    int steps;

    public static void main(String[] args) {
        int n = Integer.parseInt(option(args, "--n", "10000"));
        long seed = Long.parseLong(option(args, "--seed", "7"));
        PlannerTrial trial = new PlannerTrial();
        int wrong = 0;
        for (int i = 0; i < n; i++) {
            String fault = trial.one(seed + i);
            if (fault != null) {
                wrong++;
                System.out.println("seed " + (seed + i) + ": " + fault);
            }
        }
        System.out.printf(
                "%d sets from seed %d: %d with a plan, %.2f steps each, %d wrong%n",
                n, seed, trial.feasible, (double) trial.steps / Math.max(1, trial.feasible), wrong);
    }

    private static String option(String[] args, String name, String otherwise) {
        for (int i = 0; i + 1 < args.length; i++) {
            if (args[i].equals(name)) {
                return args[i + 1];
            }
        }
        return otherwise;
    }

    /** What is wrong; null where planner and exhaustive search agree. */
    @Nullable
    String one(long seed) {
        RandomWork work = new RandomWork(seed);
        double least = new Exhaustive(work).least();
        Optional<Plan> plan = plan(work);
        if (plan.isEmpty()) {
            return least < Double.POSITIVE_INFINITY ? "no plan, exhaustive search found " + least : null;
        }
        feasible++;
        steps += plan.get().end().steps.size();
        double minutes = plan.get().minutes();
        return Math.abs(minutes - least) <= 1e-6 ? null : "planned " + minutes + ", exhaustive search found " + least;
    }

    private static Optional<Plan> plan(RandomWork work) {
        Craft craft = work.craft();
        Piece piece = new Piece(
                "own",
                RandomWork.KIND,
                craft,
                work.has,
                Map.of(),
                java.util.Set.of(),
                PieceClass.BLANK,
                Optional.empty());
        Aim aim = new Aim(work.wants, Map.of(), 1, THREADS);
        return new Search(aim, Rack.FULL, new Charges(Optional.empty()), new Minutes(Map.of()), piece).best();
    }
}
