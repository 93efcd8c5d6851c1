package hornbook.catalogue.diagnose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The order of checks that takes the fewest minutes on average, where exactly one cause is present and no check errs.
 *
 * <p>Without set-ups that is by chance / minutes (Stone 1959; Heckerman, Breese and Rommelse 1995; the same rule as Smith
 * 1956 for weighted completion times). A set-up is work that finds nothing by itself and must come before its checks: an
 * out-tree of precedence, for which taking the best ratio of a whole beginning, set-up and first few checks together, is
 * still exact (Horn 1972, Sidney 1975). It looks as far ahead as the set-up pays, not only two steps.
 */
final class CheckOrder {
    private static final double NO_TIME = 1e-9;

    private CheckOrder() {}

    /** A check that could be next, with its worth: chance a minute, over the beginning it opens. */
    record Choice(Check check, double worth) {}

    /**
     * The checks in order.
     *
     * @param ready set-ups made already
     */
    static List<Choice> of(List<Check> checks, Set<String> ready) {
        List<Check> left = new ArrayList<>(checks);
        Set<String> made = new HashSet<>(ready);
        List<Choice> order = new ArrayList<>();
        while (!left.isEmpty()) {
            Choice next = best(left, made);
            order.add(next);
            left.remove(next.check());
            if (next.check().setUp() != null) {
                made.add(next.check().setUp());
            }
        }
        return order;
    }

    private static Choice best(List<Check> left, Set<String> made) {
        return left.stream()
                .map(check -> new Choice(check, worth(check, left, made)))
                .max(Comparator.comparingDouble(Choice::worth)
                        .thenComparingDouble(choice -> ratio(choice.check()))
                        .thenComparing(choice -> choice.check().id(), Comparator.reverseOrder()))
                .orElseThrow();
    }

    private static double worth(Check check, List<Check> left, Set<String> made) {
        if (check.setUp() == null || made.contains(check.setUp())) {
            return ratio(check);
        }
        List<Check> sharing = left.stream()
                .filter(other -> check.setUp().equals(other.setUp()))
                .sorted(Comparator.comparingDouble(CheckOrder::ratio).reversed())
                .toList();
        double chance = 0;
        double minutes = check.setUpMinutes();
        double best = 0;
        for (Check one : sharing) {
            chance += one.chance();
            minutes += one.minutes();
            best = Math.max(best, chance / Math.max(minutes, NO_TIME));
        }
        return best;
    }

    private static double ratio(Check check) {
        return check.chance() / Math.max(check.minutes(), NO_TIME);
    }

    /**
     * Minutes on average until a check says yes, or all were made.
     *
     * @param rest chance that none will
     */
    static double minutes(List<Check> order, double rest, Set<String> ready) {
        Set<String> made = new HashSet<>(ready);
        double spent = 0;
        double mean = 0;
        for (Check check : order) {
            boolean prepare = check.setUp() != null && made.add(check.setUp());
            spent += check.minutes() + (prepare ? check.setUpMinutes() : 0);
            mean += check.chance() * spent;
        }
        return mean + rest * spent;
    }
}
