package hornbook.indexer.search;

import hornbook.indexer.card.Shown.Heed;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Puts what was found in order by the rules of the shop, which no count of words knows. */
final class Order {
    private static final double JOB_ASKED_FOR = 1.0;
    private static final double JUST_BELOW = 0.999;
    /** Jobs that meet nearly as much of the query as the best one are told apart by their day alone. */
    private static final double AS_GOOD = 0.85;

    private final Plan plan;

    Order(Plan plan) {
        this.plan = plan;
    }

    List<Found> of(List<Found> found) {
        List<Found> order = new ArrayList<>(found);
        order.sort(Found::order);
        if (plan.past()) {
            order = jobsFirst(order);
        }
        return stockBeforeWhatIsKept(new Aim(plan).order(order));
    }

    private static List<Found> jobsFirst(List<Found> order) {
        double best = order.stream()
                .filter(Order::job)
                .mapToDouble(Found::score)
                .max()
                .orElse(0);
        double top = order.isEmpty() ? 0 : order.getFirst().score();
        List<Found> jobs = new ArrayList<>(order.stream()
                .filter(found -> job(found) && found.score() >= AS_GOOD * best)
                .sorted((one, other) -> day(other).compareTo(day(one)))
                .toList());
        List<Found> result = new ArrayList<>();
        for (int i = 0; i < jobs.size(); i++) {
            result.add(jobs.get(i).scoring(top + JOB_ASKED_FOR * (1 + (double) (jobs.size() - i) / jobs.size())));
        }
        order.stream().filter(found -> !jobs.contains(found)).forEach(result::add);
        return result;
    }

    private static boolean job(Found found) {
        return found.row().kind().equals("job");
    }

    private static String day(Found found) {
        return found.row().day();
    }

    /**
     * A keepsake or reserve never stands above open stock of the same thing, nor a drawer whose label is no longer true
     * above what is found by contents.
     */
    private static List<Found> stockBeforeWhatIsKept(List<Found> order) {
        Map<String, Double> lowestOpen = new HashMap<>();
        for (Found found : order) {
            if (open(found)) {
                lowestOpen.merge(item(found), found.score(), Math::min);
            }
        }
        double bestOpen = order.stream()
                .filter(Order::open)
                .mapToDouble(Found::score)
                .max()
                .orElse(0);
        List<Found> result = new ArrayList<>();
        for (Found found : order) {
            result.add(notAbove(limit(found, bestOpen, lowestOpen), found));
        }
        result.sort(Found::order);
        return result;
    }

    /** What the score must stay below; 0 where nothing limits it. */
    private static double limit(Found found, double bestOpen, Map<String, Double> lowestOpen) {
        return switch (found.row().heed()) {
            case MISLABELLED -> bestOpen;
            case KEEPSAKE, RESERVE -> lowestOpen.getOrDefault(item(found), 0.0);
            default -> 0;
        };
    }

    static Found notAbove(double limit, Found found) {
        return limit > 0 && found.score() >= limit ? found.scoring(limit * JUST_BELOW) : found;
    }

    static boolean open(Found found) {
        return found.row().kind().equals("lot") && found.row().heed() == Heed.OPEN;
    }

    static String item(Found found) {
        return found.row().item();
    }
}
